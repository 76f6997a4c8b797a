package offer_test

import (
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/formula/plan"
	"contralay/calc/query/offer"
	"contralay/model"
)

// A lay-up as a branch is as thick as the plan says. Its mass is that of its wires, those round the centre
// longer by their take-up: 1.0151 for six round one at lay ratio 12, by the table of published take-ups. Its
// bend is six times its diameter, which is more than ten wires.
func TestPlanned(t *testing.T) {
	cat := calctest.Catalogue(t)
	w, _ := cat.Wire("AS22759/32", "22")
	rules := model.Rules{}.Resolve()
	p := plan.Make(plan.Ask{Sizes: []plan.Size{{D: w.OverMM, N: 7}}, Rules: plan.Rules{LayRatio: 12, LiftMax: rules.LiftMax,
		LiftTight: rules.LiftTight, GapInner: rules.GapInner, GapOuter: rules.GapOuter, LumpyAt: rules.LumpyAt,
		FillerWeight: rules.FillerWeight, SpareGain: rules.SpareGain}})[0]
	b, ok := offer.Planned(p, []offer.Piece{{Spec: w.Spec, Size: w.Size, OverMM: w.OverMM, N: 7}}, model.Rules{}, cat)
	if !ok {
		t.Fatal("no branch")
	}
	calctest.Near(t, "over", float64(b.OverMM), float64(p.Over), 1e-9)
	calctest.Near(t, "mass", float64(b.Gram.V), float64(w.GramPerM)*(1+6*1.0151), 0.05)
	calctest.Near(t, "bend", float64(b.Bend.MinMM), 6*float64(p.Over), 1e-9)
	if b.Sheath.Part == "" || !b.Sheath.Proposed {
		t.Errorf("sheath %+v", b.Sheath)
	}

	// A wire known by its diameter alone has no mass, and so neither has the branch.
	b, ok = offer.Planned(p, []offer.Piece{{OverMM: w.OverMM, N: 7}}, model.Rules{}, cat)
	if !ok || b.Gram.Set || b.OverMM != p.Over {
		t.Errorf("ok %v, mass %v, over %v", ok, b.Gram, b.OverMM)
	}
	if _, ok := offer.Planned(p, nil, model.Rules{}, cat); ok {
		t.Error("a branch of no pieces")
	}
}
