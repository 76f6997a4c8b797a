package explain_test

import (
	"math"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/why"
	"contralay/calc/query/why/explain"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// A correction moves every diameter of a bundle of as many layers, once; the sheath is
// tested on it; the band is at least twice the spread; withdrawn, all is as it was.
func TestLearnedCorrects(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.01, 400, []int{1, 6, 12}, "", "")
	was := s.Branches[0]
	c := catalogue.Correction{Of: "over, 3 layers", Bias: 0.03, Spread: 0.02, Readings: 12, On: "2026-05-11"}
	n := calc.Build(s.H, calctest.Corrected(s, c), s)
	b := n.Branches[0]
	near := func(what string, got, want unit.Millimetre) {
		t.Helper()
		if math.Abs(float64(got-want)) > 1e-9 {
			t.Errorf("%s %v, want %v", what, got, want)
		}
	}
	near("OD", b.OverMM, was.OverMM*1.03)
	near("tape", b.TapeMM, was.TapeMM*1.03)
	near("predicted", b.Learned.PredictedMM, was.OverMM)
	near("most", b.OverMaxMM, was.OverMM*1.03*1.04)
	near("least", b.OverMinMM, was.OverMM*1.03*0.96)
	near("what the sheath passes", b.Sheath.PassMM, was.OverMM*1.03)
	if b.Layers[2].OverMM != was.Layers[2].OverMM {
		t.Error("geometry was touched")
	}
	again := calc.Build(n.H.EditWire(0, func(w *model.Wire) { w.Note = model.Some("x") }), n.Base, n)
	near("over once more", again.Branches[0].OverMM, was.OverMM*1.03)
	moved := calc.Build(n.H.EditBranch(0, func(b *model.Branch) { b.LengthMM = 410 }), n.Base, n)
	near("over of a longer one", moved.Branches[0].OverMM, was.OverMM*1.03)
	w, ok := explain.Figure(n, why.Figure{What: "branch.over", Of: "T"})
	if !ok || math.Abs(w.Made()-w.Value) > 1e-9 || !strings.Contains(w.Says, "12 readings") {
		t.Errorf("%v %+v", ok, w)
	}
	for _, f := range []string{"branch.least", "branch.most", "branch.tapeleast", "branch.tape"} {
		if w, ok := explain.Figure(n, why.Figure{What: f, Of: "T"}); !ok || math.Abs(w.Made()-w.Value) > 1e-9 {
			t.Errorf("%s: made %v, is %v", f, w.Made(), w.Value)
		}
	}
	back := calc.Build(s.H, calctest.Corrected(s, c, catalogue.Correction{Of: c.Of, Withdrawn: true}), n)
	near("withdrawn", back.Branches[0].OverMM, was.OverMM)
	other := calc.Build(s.H, calctest.Corrected(s, catalogue.Correction{Of: "over, 2 layers", Bias: 0.1}), nil)
	near("of other bundles", other.Branches[0].OverMM, was.OverMM)
	reel := calc.Build(s.H, calctest.Corrected(s, catalogue.Correction{Of: "over, own 16", Bias: 0.05}), nil)
	near("by reel", reel.Branches[0].OverMM, was.OverMM*1.05)
}
