package laycard

import (
	"testing"

	"contralay/calc/phase/threading"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// The common kind of legs is the one that most of them have as their sheath, where at least two do; a sleeve of it
// counts for nothing.
func TestCommonKindByHand(t *testing.T) {
	leg := func(parts ...string) *Card {
		c := &Card{}
		for _, p := range parts {
			c.Covers = append(c.Covers, Cover{What: "sheath", Part: p})
		}
		return c
	}
	sleeve := &Card{Covers: []Cover{{What: "sleeve", Part: "B 3"}, {What: "sleeve", Part: "B 6"}}}
	for _, c := range []struct {
		legs []*Card
		want string
	}{
		{[]*Card{leg("A 3")}, ""}, {[]*Card{leg("A 3"), leg("B 3")}, ""}, {[]*Card{leg("A 3"), leg("A 6"), leg("B 3")}, "A"},
		{[]*Card{leg("A 3"), leg("A 3"), leg("B 3"), leg("B 6"), leg("B 9")}, "B"}, {[]*Card{sleeve, sleeve, leg("own")}, ""},
	} {
		if got := commonKind(c.legs); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}

// A part in the order of threading says its kind, its part, its cut length, and that it is wound on where it passes no tails.
func TestThreadSays(t *testing.T) {
	m := list.Maker{Sys: unit.MM}
	of := func(what sheet.PartKind, from string, cut unit.Millimetre) string {
		return Thread{Threaded: threading.Threaded{What: what, Part: "X 3", From: from, CutMM: cut}}.says(m)
	}
	for _, c := range []struct{ got, want string }{
		{of(sheet.PartSheath, "P1", 120), "X 3, cut 120"}, {of(sheet.PartTransition, "P1", 0), "transition X 3"},
		{of(sheet.PartSheath, "", 120), "X 3, cut 120, wound on"},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
}

// In a picture fillers are numbered, for they are alike; what is of the harness keeps its id.
func TestFillersAreNumbered(t *testing.T) {
	row := func(id string, kind sheet.Kind) Row { return Row{ID: id, Kind: kind} }
	c := &Card{Layers: []Layer{{Rows: []Row{row("a", 0)}},
		{Index: 1, Rows: []Row{row("b", 0), row("", sheet.OfFiller), row("", sheet.OfFiller)}}}}
	got := ""
	for _, p := range askedOf(c, c.Layers, 10, 20).Pieces {
		got += p.ID + ";"
	}
	if got != "a;b;filler 1;filler 2;" {
		t.Errorf("%q", got)
	}
}
