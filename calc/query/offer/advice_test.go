package offer_test

import (
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/offer"
	"contralay/model"
	"contralay/model/unit"
)

// The size advised does, and the one below it does not; a size that drops too much or
// that a contact does not take is not advised.
func TestSmallestThatDoes(t *testing.T) {
	for _, c := range []struct {
		name, contact, wire string
		want                string
		ok                  bool
	}{
		{"little current, and the shop handles no thinner", "", "22 0.5", "24", true},
		{"the drop decides", "", "22 8.0", "16", true}, // 1 m of 18 at 8 A drops 0.17 V; heat decides for thinner
		{"the contact takes no thinner", "20", "20 0.5", "24", true},
		{"the contact allows no more", "20", "20 9.0", "", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := calctest.Carrying(t, 60, c.contact, append(calctest.Repeated(6, "22 1.0"), c.wire), nil, "")
			size, ok := offer.SmallestThatDoes(s, 6)
			if ok != c.ok {
				t.Fatalf("%q %v", size, ok)
			}
			if !ok {
				return
			}
			sizes := s.Cat.Sizes("AS22759/32")
			for n, z := range sizes {
				if z == size && n > 0 && offer.Does(s, 6, sizes[n-1]) {
					t.Errorf("%s is advised and %s does, too", size, sizes[n-1])
				}
			}
			if c.name != "the drop decides" && size != c.want {
				t.Errorf("%s, want %s", size, c.want)
			}
		})
	}
	s := calctest.Carrying(t, 60, "", []string{"22 1.0", "22 1.0"}, nil, "")
	s = calc.Build(s.H.EditWire(0, func(w *model.Wire) { w.Amps = model.Opt[unit.Ampere]{} }), s.Cat, nil)
	if size, ok := offer.SmallestThatDoes(s, 0); ok {
		t.Errorf("without a current: %s", size)
	}
}

// What is advised for all wires at once does for all at once; nothing is taken that a
// wire alone would need thicker, and the harness in hand stays as it is.
func TestAdvise(t *testing.T) {
	wires := append(calctest.Repeated(12, "20 1.0"), calctest.Repeated(12, "22 6.5")...)
	s := calctest.Carrying(t, 70, "", append(wires, "16 0.2", "12 12.0"), nil, "")
	changes, h, none := offer.Advise(s)
	if len(none) > 0 {
		t.Errorf("no size for %v", none)
	}
	if len(changes) == 0 {
		t.Fatal("nothing is advised")
	}
	d := calc.Build(h, s.Cat, nil)
	d = calc.Complete(h, s.Cat, d)
	for k := range h.Wires {
		// Laid anew in its new sizes: the advice is for the lay-up in hand.
		if c := &d.Wires[k]; float64(c.Heats) > 1.1*float64(c.Bound.V.Amps) {
			t.Errorf("%s AWG at %v A may carry %v: %s", h.Wires[k].Size, c.Heats, c.Bound.V.Amps, c.Bound.V.Where)
		}
		if s.H.Wires[k].Size == h.Wires[k].Size {
			continue
		}
		laid := calc.Build(offer.AsLaid(s).EditWire(0, func(w *model.Wire) {}), s.Cat, nil)
		if laid.H.Wires[k].Size != s.H.Wires[k].Size {
			t.Error("the harness in hand changed")
		}
	}
	same := calc.Build(withSizes(offer.AsLaid(s), h), s.Cat, nil)
	for _, c := range changes {
		if says := offer.Doubts(same, c.Wire); says != "" {
			t.Errorf("%s from %s to %s AWG: %s", h.Wires[c.Wire].ID, c.From, c.To, says)
		}
	}
	if got := h.Wires[24].Size; got != "24" {
		t.Errorf("16 AWG at 0.2 A becomes %s", got)
	}
}

// withSizes is a lay-up with the sizes of another harness.
func withSizes(h, sizes *model.Harness) *model.Harness {
	for k := range sizes.Wires {
		z := sizes.Wires[k].Size
		h = h.EditWire(k, func(w *model.Wire) { w.Size = z })
	}
	return h
}

// Why a size does not do is said.
func TestDoubt(t *testing.T) {
	s := calctest.Carrying(t, 60, "20", append(calctest.Repeated(6, "22 1.0"), "20 6.0"), nil, "")
	// 26.2 Ω/1000 ft × 6 A × 1.02 m are 0.61 V in the air's 60 °C, and 0.66 V at some 85 °C of
	// the conductor.
	for _, c := range []struct {
		size, says string
	}{{"20", ""}, {"26", "thinner than the shop uses, 24"}, {"12", "A:6 does not take it"}, {"24", "drops 0.66 V of 0.50"},
		{"21", "AS22759/32 has no size 21"}} {
		if got := offer.Doubt(s, 6, c.size); !strings.HasPrefix(got, c.says) || (got == "") != (c.says == "") {
			t.Errorf("%s: %q, want %q", c.size, got, c.says)
		}
	}
}
