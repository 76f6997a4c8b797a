package bundle_test

import (
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/bundle"
	"contralay/model"
)

// What a wire has a say in when it changes: where it runs and ran, where the other wires of its unit run and ran, and where a
// layer names it
// or its unit. Counted a second time over the wires of each example, with one wire hung elsewhere.
func TestHasASayInBySecondCount(t *testing.T) {
	units := 0
	for _, name := range calctest.Files("demo", "whole", "example") {
		prior := calc.Build(calctest.Load(t, name+".toml"), calctest.Catalogue(t), nil)
		last := len(prior.H.Wires) - 1
		h := prior.H.EditWire(last, func(w *model.Wire) { w.To, w.From = prior.H.Wires[0].To, prior.H.Wires[0].From })
		s := calc.Build(h, prior.Base, prior)
		s.Reuse.Prior = prior
		for k := range s.H.Wires {
			id := s.H.Wires[k].ID
			ids := []string{id}
			for _, u := range s.H.Units {
				if slices.Contains(u.Wires, id) {
					ids = append(append(ids, u.ID), u.Wires...)
					units++
				}
			}
			want := map[int]bool{}
			for i := range s.H.Branches {
				for j := range s.H.Wires {
					if slices.Contains(ids, s.H.Wires[j].ID) && (slices.Contains(s.Wires[j].Path, i) ||
						slices.Contains(prior.Wires[j].Path, i)) {
						want[i] = true
					}
				}
				for _, l := range s.H.Branches[i].Layers {
					if slices.Contains(l.Of, id) || len(ids) > 1 && slices.Contains(l.Of, ids[1]) {
						want[i] = true
					}
				}
			}
			got := bundle.HasASayIn(s, k)
			for i := range s.H.Branches {
				if slices.Contains(got, i) != want[i] {
					t.Errorf("%s: %s has a say in %s: %v, want %v", name, id, s.H.Branches[i].ID, !want[i], want[i])
				}
			}
		}
	}
	if units == 0 {
		t.Error("no wire was of a unit")
	}
}
