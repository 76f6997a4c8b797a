package calc_test

import (
	"fmt"
	"testing"

	"contralay/calc"
	"contralay/calc/phase/wires"
	"contralay/calc/query/lists"
	"contralay/calc/query/offer"
	"contralay/model"
	"contralay/model/unit"
)

// What is cut is what is needed: every wire with a length once, longest first within its
// reel, and the reels sum to the wire of the loom.
func TestCutList(t *testing.T) {
	for _, name := range []string{"demo", "whole", "example", "feeds"} {
		s := laidFile(t, name)
		seen := map[int]int{}
		need := unit.Millimetre(0)
		var last lists.CutRow
		for _, c := range lists.CutList(s) {
			for _, k := range c.Wires {
				seen[k]++
				if s.Wires[k].Cut != c.CutMM {
					t.Errorf("%s: wire %s is %v long in a row of %v", name, s.H.Wires[k].ID, s.Wires[k].Cut, c.CutMM)
				}
			}
			if c.Spec == last.Spec && c.Size == last.Size && c.CutMM >= last.CutMM {
				t.Errorf("%s: %v after %v", name, c.CutMM, last.CutMM)
			}
			last = c
		}
		for _, r := range lists.ReelList(s) {
			need += r.NeedMM
		}
		for k := range s.Wires {
			if want := map[bool]int{true: 1}[s.Wires[k].Cut > 0]; seen[k] != want {
				t.Errorf("%s: wire %s stands %d times", name, s.H.Wires[k].ID, seen[k])
			}
		}
		if d := need - s.Totals.WireMM; d > 1e-6 || d < -1e-6 {
			t.Errorf("%s: reels need %v, the loom is %v", name, need, s.Totals.WireMM)
		}
	}
}

// Contacts to buy are wired and unwired, samples, and 5 % more; plugs close what is not
// wired, reserved cavities too.
func TestBuyList(t *testing.T) {
	s := laidFile(t, "demo")
	wired, unwired, plugs := 0, 0, 0
	for _, b := range lists.BuyList(s) {
		wired, unwired, plugs = wired+b.Wired, unwired+b.Unwired, plugs+b.Plugs
		if b.Samples == 0 || b.More < (b.Wired+b.Unwired+b.Samples)/20 || b.Buy() != b.Wired+b.Unwired+b.Samples+b.More {
			t.Errorf("%+v", b)
		}
	}
	contacts, seal := 0, 0
	for i := range s.Terms {
		if s.Terms[i].HasContacts {
			contacts += s.Terms[i].Contacts
		}
		seal += s.Terms[i].SealPlugs
	}
	if wired+unwired != contacts || plugs != unwired || plugs == 0 {
		t.Errorf("%d wired and %d unwired, %d contacts fitted; %d plugs of %d", wired, unwired, contacts, plugs, seal)
	}
}

// A damaged wire is replaced by a spare of the same way that is no thinner.
func TestSubstitutes(t *testing.T) {
	s := laidFile(t, "demo")
	k := s.X.Wire["151"] // P1 to AUX1, 20 AWG: the spares there are 22
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
	s := laidFile(t, "demo")
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
	p := offer.Pairings(s, s.X.Termination["P1"])[0]
	if fmt.Sprint(s.H.Terminations[p.B].ID) != "AUX1" || p.Spares != 4 {
		t.Errorf("most wires run to %s: %+v", s.H.Terminations[p.B].ID, p)
	}
}

// The tree is walked once through, from the termination with the most wires, each
// branch after the one it hangs on.
func TestWalked(t *testing.T) {
	for _, name := range []string{"demo", "whole", "example", "feeds"} {
		s := laidFile(t, name)
		reached := map[string]bool{}
		seen := map[int]bool{}
		for n, w := range wires.Walked(s) {
			if n == 0 {
				reached[w.From] = true
				for k := range s.Terms {
					if s.Terms[k].Used > s.Terms[s.X.Termination[w.From]].Used {
						t.Errorf("%s: walked from %s, %s has more", name, w.From, s.H.Terminations[k].ID)
					}
				}
			}
			if !reached[w.From] || seen[w.Branch] {
				t.Errorf("%s: %s comes before %s, or twice", name, s.H.Branches[w.Branch].ID, w.From)
			}
			seen[w.Branch], reached[w.To] = true, true
		}
		if len(seen) != len(s.H.Branches) {
			t.Errorf("%s: %d of %d branches", name, len(seen), len(s.H.Branches))
		}
	}
}
