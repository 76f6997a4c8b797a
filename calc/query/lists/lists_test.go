package lists_test

import (
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/lists"
	"contralay/model/unit"
)

// What is cut is what is needed: every wire with a length once, longest first within its
// reel, and the reels sum to the wire of the loom.
func TestCutList(t *testing.T) {
	for _, name := range calctest.Files("demo", "whole", "example", "feeds") {
		s := calctest.Laid(t, name)
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
			if want := calctest.Once(s.Wires[k].Cut > 0); seen[k] != want {
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
	s := calctest.Laid(t, "demo")
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
