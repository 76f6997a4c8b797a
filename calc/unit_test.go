package calc_test

import (
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model"
	"contralay/model/unit"
)

// A unit's wire that changes makes the unit another, though one of its wires has no way.
func TestUnitOfAWireWithoutAWay(t *testing.T) {
	s := calctest.Laid(t, "example")
	u := s.H.Units[0]
	k := s.Index.Wire[u.Wires[1]]
	h := s.H.EditWire(k, func(w *model.Wire) { w.To = model.Opt[string]{} })
	h2 := *h
	h2.Units = append([]model.Unit{}, h.Units...)
	h2.Units[0].OverMM = model.Opt[unit.Millimetre]{}
	was := calc.Build(&h2, s.Cat, s)
	thick := h2.EditWire(k, func(w *model.Wire) { w.Size = "12" })
	a, b := calc.Build(thick, s.Cat, was), calc.Build(thick, s.Cat, nil)
	for i := range b.Branches {
		if b.Branches[i].Proposed {
			continue // nothing is planned here
		}
		if a.Branches[i].OverMM != b.Branches[i].OverMM {
			t.Errorf("%s: %v over, from nothing %v", s.H.Branches[i].ID, a.Branches[i].OverMM, b.Branches[i].OverMM)
		}
	}
}
