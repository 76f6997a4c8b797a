package current_test

import (
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/sheet"
)

// Sixty amperes in a wire of 22 AWG have no steady temperature. What each wire may carry is asked all the same, and bounds its current as
// in every other branch: in its neighbours nothing, for whatever they carry the bundle gets hotter and hotter; in the wire itself
// what it may carry with any other current of its own, for the limit leaves that out.
func TestLimitsWhereNothingIsSteady(t *testing.T) {
	s := calctest.Carrying(t, 20, "", []string{"22 60", "22 1", "22 1"}, nil, "")
	w := &s.Branches[0].Warm
	if g, said := calctest.Snag(s, "heat.none", "T1"); !said || g.Level != sheet.Warn || w.Known || len(w.Wires) != 0 ||
		len(w.Endless) != 3 {
		t.Fatalf("%v %+v", said, w)
	}
	for _, amps := range []string{"1", "30", "33", "100"} { // 30 have a steady temperature, above 500 C
		with := calctest.Carrying(t, 20, "", []string{"22 " + amps, "22 1", "22 1"}, nil, "").Branches[0].Warm
		calctest.Near(t, amps+" A", float64(with.Bounding()[0].Limit.V), float64(w.Endless[0].Limit.V), 0.02)
	}
	met := map[int]bool{}
	for _, c := range w.Endless {
		met[c.Wire] = true
		if !c.Limit.Set || c.Layer != 0 || c.C != 0 || c.Wire != 0 && c.Limit.V != 0 {
			t.Errorf("%s: %+v", s.H.Wires[c.Wire].ID, c)
		}
		found := false
		for _, l := range s.Wires[c.Wire].Limits {
			found = found || l.Amps == c.Limit.V && l.Origin.Source == "heat balance"
		}
		if !found {
			t.Errorf("%s is not bounded by %v A: %+v", s.H.Wires[c.Wire].ID, c.Limit.V, s.Wires[c.Wire].Limits)
		}
	}
	if len(met) != 3 {
		t.Errorf("limits of %v alone", met)
	}
}
