package cliff

import (
	"slices"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Wires of a branch, one for each diameter: that of which there are most first, of as many the thinner; a unit, what has no diameter
// and what
// runs nowhere do not count. Why none can be added: nothing is like it, an end has no free cavity, no cavity takes it, or no way is left.
func TestWhyThereIsNoRoom(t *testing.T) {
	h := &model.Harness{Terminations: []model.Termination{{ID: "P"}, {ID: "Q"}}, Branches: []model.Branch{{ID: "T", From: "P", To: "Q"}}}
	s := &sheet.Sheet{H: h, Cat: &catalogue.Catalogue{}, Branches: []sheet.Branch{{}}, Terms: make([]sheet.Term, 2)}
	for k, d := range []unit.Millimetre{3, 1, 2, 1, 2, 0} {
		h.Wires = append(h.Wires, model.Wire{ID: string(rune('a' + k)), Spec: "own", Size: "22"})
		s.Wires = append(s.Wires, sheet.Wire{Dia: sheet.Dia{Nominal: d}})
	}
	h.Units = []model.Unit{{ID: "U"}}
	s.Units = []sheet.Unit{{Dia: sheet.Dia{Nominal: 5}}}
	s.Index = model.NewIndex(h)
	s.Branches[0].Components = []string{"nobody", "U", "a", "c", "b", "d", "e", "f"}
	if got := bySize(s, 0); !slices.Equal(got, []int{1, 2, 0}) {
		t.Errorf("%v, want [1 2 0]", got)
	}
	s.Terms[1].Free = []string{"1"}
	if got := noRoom(s, 0); got != "No spare can be added: no cavity is free at the P end" {
		t.Error(got)
	}
	s.Terms[0].Free, s.Terms[1].Free = []string{"1"}, nil
	if got := noRoom(s, 0); got != "No spare can be added: no cavity is free at the Q end" {
		t.Error(got)
	}
	s.Terms[1].Free = []string{"1"}
	if got := noRoom(s, 0); got != "No spare can be added: no way leads through here from one free cavity to another" {
		t.Error(got)
	}
	s.Branches[0].Components = []string{"nobody", "U", "f"}
	if got := noRoom(s, 0); got != "No single wire of a known size runs here: there is nothing a spare could be like" {
		t.Error(got)
	}
}
