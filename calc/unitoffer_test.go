package calc_test

import (
	"fmt"
	"testing"

	"contralay/calc"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
)

// Few thin wires among thick ones: whatever is offered as a unit is offered truly.
// Made up and planned afresh, the branch has the figures told, with fewer fillers or
// lumps than before; and some gain by it.
func TestUnitOffersHold(t *testing.T) {
	gained := 0
	for n := 6; n <= 20; n++ {
		h := parse(t, bare(n, "22", "length_mm = 400.0\nunits_inside = false\n"))
		for k := n % 4; k < n-2; k++ {
			h = h.EditWire(k, func(w *model.Wire) { w.Size = "14" })
		}
		s := calc.Complete(h, entries(t), nil)
		for _, o := range planning.UnitOffers(s, 0) {
			gained++
			with := calc.Complete(h.AddUnit(model.Unit{ID: "U1", Wires: o.Wires, Build: model.Some(o.Build)}), entries(t), nil)
			best, ok := with.Proposals[bundle.PlanKey(with, 0)].Best()
			if !ok || best.Plan.Fillers != o.Fillers {
				t.Errorf("%d: %s of %v told %d fillers, laid %d", n, o.Build, o.Wires, o.Fillers, best.Plan.Fillers)
			}
			near(t, fmt.Sprintf("%d: over", n), float64(best.Plan.Over), float64(o.Over), 1e-9)
			if was := o.Was(); best.Plan.Cost >= was.Cost || best.Plan.Fillers >= was.Fillers && best.Plan.Lumpy >= was.Lumpy {
				t.Errorf("%d: %s gains nothing: %+v", n, o.Build, o)
			}
		}
	}
	if gained == 0 {
		t.Error("no count gains by a unit")
	}
	t.Logf("%d offers", gained)
}

// Filler off the shelf stands what the shop says, white wire what its reel does.
func TestFillerHeat(t *testing.T) {
	for _, c := range []struct {
		rules, layer string
		stop         bool
	}{
		{"", "fillers = 1\n", false}, // white 22 AWG, rated well above
		{"filler_stock_mm = [1.0]\nfiller_c = 105.0\n", "fillers = 1\nfiller_mm = 1.0\n", true},
		{"filler_stock_mm = [1.0]\nfiller_c = 150.0\n", "fillers = 1\nfiller_mm = 1.0\n", false},
		{"filler_stock_mm = [1.0]\n", "fillers = 1\nfiller_mm = 1.0\n", false}, // not told, so not judged
	} {
		text := "format = 1\n[rules]\n" + c.rules +
			bare(7, "22", "length_mm = 300.0\nambient_c = 120.0\n[[branch.layer]]\nof = [\"0\"]\n[[branch.layer]]\nof = [\"1\", \"2\", "+
				"\"3\", \"4\", \"5\", \"6\"]\n"+c.layer)[len("format = 1\n"):]
		g, ok := has(calc.Complete(parse(t, text), entries(t), nil), "filler.heat", "T1")
		if ok != c.stop || ok && g.Level != sheet.Stop {
			t.Errorf("%q: %v %+v", c.rules, ok, g)
		}
	}
}
