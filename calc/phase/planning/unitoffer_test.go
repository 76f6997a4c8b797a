package planning_test

import (
	"fmt"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/model"
)

// Few thin wires among thick ones: whatever is offered as a unit is offered truly.
// Made up and planned afresh, the branch has the figures told, with fewer fillers or
// lumps than before; and some gain by it.
func TestUnitOffersHold(t *testing.T) {
	gained := 0
	for n := 6; n <= 20; n++ {
		h := calctest.Parse(t, calctest.OneSize(n, "22", "length_mm = 400.0\nunits_inside = false\n"))
		for k := n % 4; k < n-2; k++ {
			h = h.EditWire(k, func(w *model.Wire) { w.Size = "14" })
		}
		s := calc.Complete(h, calctest.Catalogue(t), nil)
		for _, o := range planning.UnitOffers(s, 0) {
			gained++
			with := calc.Complete(h.AddUnit(model.Unit{ID: "U1", Wires: o.Wires, Build: model.Some(o.Build)}), calctest.Catalogue(t), nil)
			best, ok := with.Proposals[bundle.PlanKey(with, 0)].Best()
			if !ok || best.Plan.Fillers != o.Fillers {
				t.Errorf("%d: %s of %v told %d fillers, laid %d", n, o.Build, o.Wires, o.Fillers, best.Plan.Fillers)
			}
			calctest.Near(t, fmt.Sprintf("%d: over", n), float64(best.Plan.Over), float64(o.Over), 1e-9)
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
