package run_test

import (
	"math"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/formula/learn"
	"contralay/calc/query/lists"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
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

// A serial keeps the figures it was begun with. The shop learned 2.04 %, then 5 %: one that was begun by nothing
// stays as predicted, one begun by 2.0 % stands by the 2.04 % that the history has, and by 2.0 % where the
// history is gone; one of which nothing is known, and the next that is begun, stand by the 5 %.
func TestSerialKeepsItsFigures(t *testing.T) {
	s := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", "")
	first, then := catalogue.Correction{Of: "over, 3 layers", Bias: 0.0204}, catalogue.Correction{Of: "over, 3 layers", Bias: 0.05}
	whole := calc.Build(s.H, calctest.Corrected(s, first, then), nil)
	short := calc.Build(s.H, calctest.Corrected(s, then), nil)
	gone := calc.Build(s.H, calctest.Corrected(s, first, then, catalogue.Correction{Of: then.Of, Withdrawn: true}), nil)
	step := run.RunStep{Kind: run.LayStep, Of: "T", Layer: 2}
	for _, c := range []struct {
		name  string
		s     *sheet.Sheet
		begun []string
		want  float64
	}{{"begun by nothing", whole, []string{}, 0}, {"begun by 2.0 %", whole, []string{"over, 3 layers: +2.0 %"}, 0.0204},
		{"without a history", short, []string{"over, 3 layers: +2.0 %"}, 0.02}, {"not known", whole, nil, 0.05},
		{"withdrawn since", gone, []string{"over, 3 layers: +5.0 %"}, 0.05}, {"withdrawn, not known", gone, nil, 0},
		{"another kind", whole, []string{"wall, AS23053/16: +9.0 %"}, 0}} {
		b := &model.Build{Serial: "1", GoesBy: c.begun}
		want := float64(s.Branches[0].Layers[2].OverMM) * (1 + c.want)
		over, ok := run.SheetOver(c.s, b, step)
		e, read := run.Explain(c.s, b, 0, step, []unit.Millimetre{unit.Millimetre(want)})
		if !ok || !read || math.Abs(float64(over)-want) > 1e-6 || math.Abs(float64(e.SheetMM)-want) > 1e-6 || e.Told != run.AsSheet {
			t.Errorf("%s: the sheet has %.4f, and explains by %.4f, want %.4f", c.name, over, e.SheetMM, want)
		}
		if !(float64(e.LeastMM) < want && float64(e.MostMM) > want) || float64(e.MostMM) > want*1.1 {
			t.Errorf("%s: %.3f to %.3f, about %.3f", c.name, e.LeastMM, e.MostMM, want)
		}
	}
}
