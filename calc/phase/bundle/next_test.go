package bundle

import (
	"fmt"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
)

// The wire most used up to a layer, by hand: of equals the size that had so many first, and of that the wire it had them with. Sizes are
// one however they are written; what is no wire does not count.
func TestCommonestWire(t *testing.T) {
	h := &model.Harness{Wires: []model.Wire{{ID: "a", Spec: "s", Size: "22"}, {ID: "b", Spec: "s", Size: "20"}, {ID: "c", Spec: "s",
		Size: "20"}, {ID: "d", Spec: "r", Size: "22"}, {ID: "e", Spec: "s", Size: "22"}, {ID: "f", Spec: "s", Size: "22"}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Branches: make([]sheet.Branch, 1)}
	for _, ids := range [][]string{{"filler"}, {"a"}, {"b", "U"}, {"c", "d"}, {"e", "filler"}, {"f"}} {
		var l sheet.Layer
		for _, id := range ids {
			l.Members = append(l.Members, sheet.Member{ID: id})
		}
		s.Branches[0].Layers = append(s.Branches[0].Layers, l)
	}
	for layer, want := range []int{-1, 0, 0, 2, 2, 5} {
		if got := Commonest(s, 0, layer); got != want {
			t.Errorf("up to layer %d: %d, want %d", layer, got, want)
		}
	}
}

// Where a component goes on into beyond the to end of a branch: the next branch, or what it ends at there; a wire walked from either end,
// a unit as its first wire does.
func TestWhereAComponentGoesOn(t *testing.T) {
	h := &model.Harness{Terminations: []model.Termination{{ID: "A"}, {ID: "B"}, {ID: "C"}}, Breakouts: []model.Breakout{{ID: "J"}},
		Splices:  []model.Splice{{ID: "S", At: "J"}},
		Branches: []model.Branch{{ID: "T0", From: "A", To: "J"}, {ID: "T1", From: "J", To: "B"}, {ID: "T2", From: "J", To: "C"}},
		Units:    []model.Unit{{ID: "U", Wires: []string{"on", "back"}}, {ID: "none"}}}
	wire := func(id, from, to, capped string) {
		w := model.Wire{ID: id}
		for v, of := range map[string]*model.Opt[string]{from: &w.From, to: &w.To, capped: &w.CappedAt} {
			if v != "" {
				*of = model.Some(v)
			}
		}
		h.Wires = append(h.Wires, w)
	}
	wire("dead", "A:0", "", "J")
	wire("on", "A:1", "B:1", "")
	wire("back", "C:1", "A:2", "")
	wire("spliced", "S", "A:3", "")
	wire("not capped", "A:4", "", "")
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Wires: []sheet.Wire{{Path: []int{0}}, {Path: []int{0, 1}}, {Path: []int{2, 0}},
		{Path: []int{0}}, {Path: []int{0}}}}
	for _, c := range []struct {
		id   string
		want [3]string
	}{
		{"dead", [3]string{"cap", "", ""}}, {"on", [3]string{"T1", "B", ""}}, {"back", [3]string{"T2", "", "C"}}, {"spliced",
			[3]string{"S", "", ""}},
		{"U", [3]string{"T1", "B", ""}}, {"none", [3]string{}}, {"nobody", [3]string{}}, {"not capped", [3]string{}},
	} {
		for i, want := range c.want {
			if i > 0 && c.id == "dead" {
				continue // it does not run there
			}
			if got := NextAfter(s, i, c.id); got != want {
				t.Errorf("%s beyond %s: %q, want %q", c.id, fmt.Sprint("T", i), got, want)
			}
		}
	}
	if got := []string{FarEnd(s, 0, "on"), FarEnd(s, 1, "on"), FarEnd(s, 0, "back"), FarEnd(s, 2, "on"), FarEnd(s, 0, "U")}; fmt.Sprint(
		got) != "[B:1 B:1 C:1  ]" {
		t.Errorf("%q", got)
	}
}
