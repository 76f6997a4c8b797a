package bulk_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/bulk"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// What a splice can be chosen of, by hand from the tree of the bank: 101 and 102 share BOX and L1, in that order, and pass J1 and J2 from
// BOX, J2 and J1 from L1; with 103 they share BOX, and only J1; with 105 only L1, and go by J2 and J1 both; 104 and 105 share L2 and J1.
// One wire shares with itself whatever it passes.
func TestSpliceChoicesByHand(t *testing.T) {
	s := calctest.Built(t, bank)
	for _, c := range []struct {
		wires           []string
		common          string
		commons, places string
	}{
		{[]string{"101", "102"}, "", "BOX L1", "J1 J2"}, {[]string{"101", "102"}, "BOX", "BOX L1", "J1 J2"},
		{[]string{"101", "102"}, "L1", "BOX L1", "J2 J1"}, {[]string{"101", "102"}, "L2", "BOX L1", ""},
		{[]string{"103", "101", "102"}, "", "BOX", "J1"}, {[]string{"101", "105"}, "", "L1", "J2 J1"}, {[]string{"105", "104"},
			"", "L2", "J1"},
		{[]string{"101", "no such"}, "", "", ""}, {nil, "", "", ""},
		{[]string{"101"}, "", "BOX L1", "J1 J2"}, {[]string{"101", "101"}, "L1", "BOX L1", "J2 J1"},
	} {
		commons, places := bulk.SpliceChoices(s, c.wires, c.common)
		if strings.Join(commons, " ") != c.commons || strings.Join(places, " ") != c.places {
			t.Errorf("%v at %q: %v and %v, want %s and %s", c.wires, c.common, commons, places, c.commons, c.places)
		}
	}
}

// Whatever can be chosen is taken, and nothing else: of every pair of wires of a loom, each breakout that all pass, and none other.
func TestSpliceChoicesAreAllThatIsTaken(t *testing.T) {
	s := calctest.Built(t, bank)
	taken, refused := 0, 0
	for a := range s.H.Wires {
		for b := range a {
			ids := []string{s.H.Wires[a].ID, s.H.Wires[b].ID}
			for k := range s.H.Terminations {
				term := s.H.Terminations[k].ID
				commons, places := bulk.SpliceChoices(s, ids, term)
				for _, j := range []string{"J1", "J2", "L1"} {
					got, err := bulk.SpliceOf(s, bulk.SpliceAsk{Wires: ids, Common: term, At: j})
					roles := s.H.Wires[a].Role.V != "" && s.H.Wires[b].Role.V != "" && s.H.Wires[a].Role.V != s.H.Wires[b].Role.V
					want := slices.Contains(commons, term) && slices.Contains(places, j) && !roles
					if want != (err == nil) {
						t.Errorf("%v at %s, %s: %v", ids, term, j, err)
					}
					if err != nil {
						refused++
						if got.H != nil || got.Says != "" || len(got.Wires) > 0 {
							t.Errorf("%v at %s, %s is refused and gives %q", ids, term, j, got.Says)
						}
						continue
					}
					taken++
					if sp := got.H.Splices[len(got.H.Splices)-1]; sp.At != j || !strings.HasPrefix(wire(t, got.H,
						got.Wires[0]).From.V, term+":") {
						t.Errorf("%v at %s, %s lies at %s", ids, term, j, sp.At)
					}
				}
			}
		}
	}
	if taken < 5 || refused < 5 {
		t.Errorf("%d taken, %d refused", taken, refused)
	}
}

// What is not known of a current is said, and the wire on is then the thickest; of several the one with most copper; its cavity is the
// first of theirs by the connector, and what they do not share it does not have.
func TestSpliceWithoutACurrent(t *testing.T) {
	s := calctest.Built(t, bank)
	h := s.H
	for id, size := range map[string]string{"101": "22", "102": "16", "103": "18"} {
		h = h.EditWire(s.Index.Wire[id], func(w *model.Wire) { w.Size = size })
	}
	h = h.EditWire(s.Index.Wire["103"], func(w *model.Wire) {
		w.Amps, w.Safety, w.Signal = model.Opt[unit.Ampere]{}, model.Some(true), model.Some("other")
	})
	s = sheetAs(t, h)
	got, err := bulk.SpliceOf(s, bulk.SpliceAsk{Wires: []string{"101", "102", "103"}})
	if err != nil {
		t.Fatal(err)
	}
	on := wire(t, got.H, got.Wires[0])
	if on.Size != "16" || on.Amps.Set || on.From.V != "BOX:1" || !on.Safety.V || on.Signal.Set || on.Role.V != model.RolePower {
		t.Errorf("%+v", on)
	}
	want := "splice S1 at J1 joins 101, 102 and 103; wire " + on.ID +
		", 16 AWG, goes on to BOX:1. The current of 103 is not entered: its size is that of the thickest"
	if got.Says != want {
		t.Errorf("%q, want %q", got.Says, want)
	}
	// 400 A are more than any size of the table bears. None is marked safety-critical now: such a wire is not rated at all.
	h = s.H
	for _, id := range []string{"101", "102", "103"} {
		h = h.EditWire(s.Index.Wire[id], func(w *model.Wire) {
			w.Amps, w.Safety = model.Some[unit.Ampere](400), model.Opt[bool]{}
		})
	}
	got, err = bulk.SpliceOf(sheetAs(t, h), bulk.SpliceAsk{Wires: []string{"101", "102", "103"}})
	if err != nil || !strings.HasSuffix(got.Says, "No size satisfies 1200 A there: see its page") {
		t.Fatalf("%v: %s", err, got.Says)
	}
	if on := wire(t, got.H, got.Wires[0]); !strings.HasPrefix(on.From.V, "BOX:") || on.Amps.V != 1200 || on.Size == "" {
		t.Errorf("%+v", on)
	}
}

// Every refusal of a splice names what it is about and what to do.
func TestSpliceRefusals(t *testing.T) {
	edit := func(id string, f func(w *model.Wire)) func(h *model.Harness) *model.Harness {
		return func(h *model.Harness) *model.Harness {
			for k := range h.Wires {
				if h.Wires[k].ID == id {
					return h.EditWire(k, f)
				}
			}
			return h
		}
	}
	for _, c := range []struct {
		wires  []string
		common string
		at     string
		edit   func(h *model.Harness) *model.Harness
		want   string
	}{
		{[]string{"101"}, "", "", nil, "a splice joins two wires or more: choose more"},
		{[]string{"101", "102"}, "", "", nil, "the wires share both ends, BOX and L1: choose which of them the one wire goes to"},
		{[]string{"101", "104"}, "", "", nil, "101 is power and 104 is ground: a splice would join them"},
		{[]string{"101", "102"}, "L2", "", nil, "not every wire ends at L2"},
		{[]string{"101", "103"}, "", "J2", nil, "they do not all pass J2: choose J1"},
		{[]string{"101", "103"}, "", "", edit("103", func(w *model.Wire) { w.Role = model.Some(model.RoleSpare) }),
			"wire 103 is a spare: it is joined to nothing"},
		{[]string{"101", "103"}, "", "", edit("103", func(w *model.Wire) { w.To = model.Opt[string]{} }),
			"wire 103 runs nowhere yet: give it both ends"},
		{[]string{"104", "105"}, "", "", edit("104", func(w *model.Wire) { w.To = model.Some("L1:9") }), ""},
		{[]string{"103", "105"}, "BOX", "", nil, "not every wire ends at BOX"},
	} {
		h := calctest.Parse(t, bank)
		if c.edit != nil {
			h = c.edit(h)
		}
		got, err := bulk.SpliceOf(sheetAs(t, h), bulk.SpliceAsk{Wires: c.wires, Common: c.common, At: c.at})
		if fmt.Sprint(err) != c.want && c.want != "" {
			t.Errorf("%v: %v, want %s", c.wires, err, c.want)
		}
		if err != nil && (got.H != nil || got.Says != "" || got.Wires != nil) {
			t.Errorf("%v is refused and gives %+v", c.wires, got)
		}
	}
}

// Lists of names, and what was coloured, in words.
func TestWordsOfMany(t *testing.T) {
	for _, c := range []struct {
		ids  string
		want string
	}{{"", "none"}, {"a", "a"}, {"a b", "a and b"}, {"a b c d", "a, b, c and d"}, {"a b c d e", "a, b, c and 2 more"},
		{"a b c d e f g h i", "a, b, c and 6 more"}} {
		if got := bulk.Named(strings.Fields(c.ids)); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
	for _, c := range []struct {
		of   bulk.Coloured
		want string
	}{
		{bulk.Coloured{}, "no wire gets a colour"}, {bulk.Coloured{Wires: []string{"1"}}, "1 wire coloured"},
		{bulk.Coloured{Wires: []string{"1", "2"}, Kept: 3}, "2 wires coloured, 3 keep theirs"},
		{bulk.Coloured{Kept: 1, Lacks: []bulk.Lack{{Says: "A"}, {Says: "B"}}}, "no wire gets a colour, 1 keep theirs. A. B"},
	} {
		if got := c.of.Text(); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}

func sheetAs(t *testing.T, h *model.Harness) *sheet.Sheet {
	t.Helper()
	return calc.Build(h, calctest.Catalogue(t), nil)
}
