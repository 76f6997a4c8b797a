package calc_test

import (
	"math"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/formula/learn"
	"contralay/calc/query/lists"
	"contralay/calc/query/run"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// taught is the catalogue of a sheet with corrections.
func taught(s *sheet.Sheet, cs ...catalogue.Correction) *catalogue.Catalogue {
	return catalogue.Merge(s.Cat, &catalogue.Catalogue{Corrections: cs})
}

// A correction moves every diameter of a bundle of as many layers, once; the sheath is
// tested on it; the band is at least twice the spread; withdrawn, all is as it was.
func TestLearnedCorrects(t *testing.T) {
	s := ringed(t, 1.09, 0.01, 400, []int{1, 6, 12}, "", "")
	was := s.Branches[0]
	c := catalogue.Correction{Of: "over, 3 layers", Bias: 0.03, Spread: 0.02, Readings: 12, On: "2026-05-11"}
	n := calc.Build(s.H, taught(s, c), s)
	b := n.Branches[0]
	near := func(what string, got, want unit.Millimetre) {
		t.Helper()
		if math.Abs(float64(got-want)) > 1e-9 {
			t.Errorf("%s %v, want %v", what, got, want)
		}
	}
	near("over", b.OverMM, was.OverMM*1.03)
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
	w, ok := why.Explain(n, why.Figure{What: "branch.over", Of: "T"})
	if !ok || math.Abs(w.Made()-w.Value) > 1e-9 || !strings.Contains(w.Says, "12 readings") {
		t.Errorf("%v %+v", ok, w)
	}
	for _, f := range []string{"branch.least", "branch.most", "branch.tapeleast", "branch.tape"} {
		if w, ok := why.Explain(n, why.Figure{What: f, Of: "T"}); !ok || math.Abs(w.Made()-w.Value) > 1e-9 {
			t.Errorf("%s: made %v, is %v", f, w.Made(), w.Value)
		}
	}
	back := calc.Build(s.H, taught(s, c, catalogue.Correction{Of: c.Of, Withdrawn: true}), n)
	near("withdrawn", back.Branches[0].OverMM, was.OverMM)
	other := calc.Build(s.H, taught(s, catalogue.Correction{Of: "over, 2 layers", Bias: 0.1}), nil)
	near("of other bundles", other.Branches[0].OverMM, was.OverMM)
	reel := calc.Build(s.H, taught(s, catalogue.Correction{Of: "over, own 16", Bias: 0.05}), nil)
	near("by reel", reel.Branches[0].OverMM, was.OverMM*1.05)
}

// A wall that was measured stands over the catalogue's, one read off the reel over both.
func TestLearnedWall(t *testing.T) {
	s := ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", coverText("sheath", "  part = \"AS23053/16 9.5\"\n"))
	was := s.Branches[0].Sheath.Tube.WallMM
	cat := taught(s, catalogue.Correction{Of: "wall, AS23053/16", Bias: 0.1, Readings: 9})
	n := calc.Build(s.H, cat, s)
	if tube := n.Branches[0].Sheath.Tube; math.Abs(float64(tube.WallMM-was*1.1)) > 1e-9 || tube.WallStanding != catalogue.House {
		t.Errorf("wall %v, was %v", tube.WallMM, was)
	}
	h := *s.H
	h.Parts = []model.Part{{ID: "AS23053/16 9.5", WallMM: model.Some[unit.Millimetre](1.0)}}
	if tube := calc.Build(&h, cat, n).Branches[0].Sheath.Tube; tube.WallMM != 1.0 {
		t.Errorf("read off the reel: %v", tube.WallMM)
	}
	if tube := calc.Build(s.H, s.Cat, n).Branches[0].Sheath.Tube; tube.WallMM != was {
		t.Errorf("the catalogue itself was changed: %v", tube.WallMM)
	}
}

// What was measured is taken up with what geometry predicts, whatever is corrected by then;
// a shop whose bundles stand a known share off teaches that share.
func TestMeasuredTeaches(t *testing.T) {
	s := ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", coverText("sheath", "  part = \"AS23053/16 9.5\"\n"))
	over, tube := s.Branches[0].OverMM, s.Branches[0].Sheath.Tube
	wall := float64(tube.WallMM) * 1.1 // and keeps its cross-section on what it lies on
	h := s.H
	for k, off := range []float64{0.021, 0.019, 0.020, 0.022, 0.018, 0.0205, 0.0195, 0.02, 0.0202, 0.0198} {
		h = h.EditBuild(string(rune('a'+k)), func(b *model.Build) {
			read := over * unit.Millimetre(1+off)
			b.Readings = []model.Reading{{Branch: "T", Layer: 2, OverMM: []unit.Millimetre{read - 0.01, read + 0.01}},
				{Branch: "T", Layer: 9, OverMM: []unit.Millimetre{1}}, {Branch: "gone", OverMM: []unit.Millimetre{1}}}
			b.Tubes = []model.Recovered{{Branch: "T",
				OverMM: unit.Millimetre(math.Sqrt(float64(read*read) + 4*wall*(float64(tube.RecoveredMM)+wall)))}}
			b.Used = []model.UsedWire{{Spec: "own", Size: "16", UsedMM: lists.ReelList(s)[0].NeedMM * 1.07}}
		})
	}
	for name, cat := range map[string]*catalogue.Catalogue{"bare": s.Base,
		"corrected": taught(s, catalogue.Correction{Of: "over, 3 layers", Bias: 0.02},
			catalogue.Correction{Of: "wall, AS23053/16", Bias: 0.1})} {
		n := calc.Build(h, cat, nil)
		got := map[string]learn.Lesson{}
		for _, l := range learn.Lessons(run.Measured(n, "loom"), learn.Options{}) {
			got[l.Group] = l
		}
		for group, want := range map[string]float64{"over, 3 layers": 0.02, "over, own 16": 0.02, "wall, AS23053/16": 0.1,
			"wire used, own 16": 0.07} {
			l := got[group]
			if l.N != 10 || !l.Enough || math.Abs(l.Bias-want) > 1e-3 {
				t.Errorf("%s, %s: %+v, want a bias of %v", name, group, l, want)
			}
		}
		if len(got) != 4 {
			t.Errorf("%s: %d groups: %v", name, len(got), got)
		}
	}
}
