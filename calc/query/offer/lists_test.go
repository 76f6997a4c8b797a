package offer_test

import (
	"fmt"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/offer"
	"contralay/model"
)

// A damaged wire is replaced by a spare of the same way that is no thinner.
func TestSubstitutes(t *testing.T) {
	s := calctest.Laid(t, "demo")
	k := s.Index.Wire["151"] // P1 to AUX1, 20 AWG: the spares there are 22
	if got := offer.Substitutes(s, k); len(got) != 0 {
		t.Errorf("a thinner one stands in: %+v", got)
	}
	h := s.H.EditWire(k, func(w *model.Wire) { w.Size = "22" })
	s = calc.Build(h, s.Cat, s)
	got := offer.Substitutes(s, k)
	if len(got) != 4 || s.H.Wires[got[0].Wire].ID != "SP1" || got[0].FromA != s.H.Wires[k].From.V ||
		got[0].ToA != s.H.Wires[got[0].Wire].From.V {
		t.Errorf("%+v", got)
	}
}

// What two terminations still take is bounded by the free cavities of both; one more
// wire makes no branch thinner.
func TestPairings(t *testing.T) {
	s := calctest.Laid(t, "demo")
	for i := range s.Terms {
		for _, p := range offer.Pairings(s, i) {
			if p.More > len(s.Terms[p.A].Free) || p.More > len(s.Terms[p.B].Free) || p.Wires < p.Spares || p.Wires == 0 {
				t.Errorf("%+v", p)
			}
			if _, d, _, ok := offer.OneMore(s, p); ok && d < 0 || ok != (p.More > 0) {
				t.Errorf("%+v: %v thicker, %v", p, d, ok)
			}
		}
	}
	p := offer.Pairings(s, s.Index.Termination["P1"])[0]
	if fmt.Sprint(s.H.Terminations[p.B].ID) != "AUX1" || p.Spares != 4 {
		t.Errorf("most wires run to %s: %+v", s.H.Terminations[p.B].ID, p)
	}
}
