package calc

import (
	"slices"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
)

// What a harness shares with the one before it, by hand: everything; all wires but the one of another size; none in their order;
// nothing where
// what they lie in, their number or the catalogue is another. The index of the same ids is the prior's, over this harness.
func TestWhatIsSharedWithThePrior(t *testing.T) {
	cat := &catalogue.Catalogue{}
	h := &model.Harness{Wires: []model.Wire{{ID: "a", Size: "22"}, {ID: "b", Size: "20"}}, Terminations: []model.Termination{{ID: "P"}}}
	for _, c := range []struct {
		name             string
		change           func(h *model.Harness)
		places, ids, all bool
		wires            []bool
	}{
		{"as it was", func(*model.Harness) {}, true, true, true, []bool{true, true}},
		{"another size", func(h *model.Harness) { h.Wires[1].Size = "18" }, true, true, false, []bool{true, false}},
		{"another id", func(h *model.Harness) { h.Wires[0].ID = "c" }, true, false, false, []bool{false, true}},
		{"one more", func(h *model.Harness) { h.Wires = append(h.Wires, model.Wire{ID: "c"}) }, true, false, false, nil},
		{"another end", func(h *model.Harness) { h.Terminations = slices.Clone(h.Terminations) }, false, false, false, nil},
	} {
		prior := &sheet.Sheet{H: h, Cat: cat, Index: model.NewIndex(h)}
		now := *h
		now.Wires = slices.Clone(h.Wires)
		c.change(&now)
		s := &sheet.Sheet{H: &now, Cat: cat}
		compareWires(s, prior)
		if r := s.Reuse; r.Prior != prior || r.Places != c.places || r.Ids != c.ids || r.All != c.all || c.ids && !slices.Equal(r.Wires,
			c.wires) {
			t.Errorf("%s: %+v", c.name, r)
		}
		x := index(s)
		if _, kept := x.Termination["P"]; !kept || x.H != &now {
			t.Errorf("%s: an index of another harness", c.name)
		}
		if _, there := x.Wire[now.Wires[len(now.Wires)-1].ID]; !there {
			t.Errorf("%s: its last wire is not found", c.name)
		}
	}
	s := &sheet.Sheet{H: h, Cat: cat}
	if compareWires(s, nil); s.Reuse.Prior != nil || s.Reuse.Places {
		t.Errorf("without a prior: %+v", s.Reuse)
	}
	if compareWires(s, &sheet.Sheet{H: h, Cat: &catalogue.Catalogue{}}); s.Reuse.Places || s.Reuse.Ids || s.Reuse.All {
		t.Errorf("another catalogue: %+v", s.Reuse)
	}
}
