package run_test

import (
	"math"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/learn"
	"contralay/calc/query/lists"
	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What was measured is taken up with what geometry predicts, whatever is corrected by then;
// a shop whose bundles stand a known share off teaches that share.
func TestMeasuredTeaches(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", calctest.CoverText("sheath", "  part = \"AS23053/16 9.5\"\n"))
	over, tube := s.Branches[0].OverMM, s.Branches[0].Sheath.Tube.V
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
		"corrected": calctest.Corrected(s, catalogue.Correction{Of: "over, 3 layers", Bias: 0.02},
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
