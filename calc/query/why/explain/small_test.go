package explain_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/why"
	"contralay/calc/query/why/explain"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// small are looms that are quick to explain: between them they have each figure but those of options, wishes and buses.
func small(t *testing.T) map[string]*sheet.Sheet {
	bind := func(s *sheet.Sheet) *sheet.Sheet {
		h := s.H.EditBranch(0, func(b *model.Branch) {
			b.Layers = model.CloneLayers(s.Branches[0].As)
			for k := range b.Layers {
				b.Layers[k].BindMM = model.Some(unit.Millimetre(0.1 + 0.05*float64(k)))
			}
		})
		return calc.Build(h, s.Base, nil)
	}
	plain := calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6, 12}, "", "bend_mm = 17.0\nbend_deg = 90.0\n")
	learned := calctest.Corrected(plain, catalogue.Correction{Of: "over, 3 layers", Bias: 0.03, Spread: 0.02, Readings: 12,
		On: "2026-05-11"})
	boot := "[[termination]]\nid = \"P\"\ninsert = \"14-35\"\nboot = \"boot-straight-14\"\nloop_mm = 15.0\n"
	covers := calctest.CoverText("tape", "") + calctest.CoverText("braid", "  thick_mm = 0.25\n") + calctest.CoverText("sheath", "") +
		calctest.CoverText("sleeve", "  part = \"AS23053/16 9.5\"\n  from_mm = 100.0\n  to_mm = 200.0\n")
	duty := []string{"22 3.0", "22 3.0", "20 5.0\non_s = 0.5\nperiod_s = 2.0\nrest_a = 0.1", "22 1.0", "22 0.5", "22 0.5",
		"22 2.0\nreturn = \"w0\"\nmeasured_drop_v = 0.2"}
	return map[string]*sheet.Sheet{
		"three layers": plain, "with binders": bind(plain), "corrected": calc.Build(plain.H, learned, nil),
		"proud":       bind(calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 7}, "", "")),
		"one too few": calctest.Ringed(t, 1.09, 0.05, 400, []int{2, 6}, "", ""),
		"twisted":     bind(calctest.Ringed(t, 1.09, 0.05, 400, []int{7}, "", "")),
		"five":        bind(calctest.Ringed(t, 1.09, 0.05, 400, []int{5, 11}, "", "")),
		"covered":     calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6}, boot, covers),
		"long loop":   calctest.Ringed(t, 1.09, 0.05, 400, []int{1, 6}, strings.Replace(boot, "15.0", "400.0", 1), ""),
		"whole":       calctest.Built(t, calctest.LacksNothing),
		"fed": calctest.Carrying(t, 70, "20", duty, [][]int{{0}, {1, 2, 3, 4, 5, 6}},
			"[[feed]]\nid = \"F\"\ndevice = \"blade\"\namps = 10.0\n"+
				"wires = [\"w1\", \"w2\"]\n[[feed]]\nid = \"G\"\ndevice = \"electronic\"\namps = 8.0\noutputs = 2\ntrip_s = 0.1\nwires = "+
				"[\"w3\", \"w6\"]\n"),
	}
}

// Each figure of each small loom comes to its value from its own inputs, which say what they are and whence; and of what is not there
// nothing is explained.
func TestEveryFigureOfSmallLooms(t *testing.T) {
	met := map[string]int{}
	for name, s := range small(t) {
		e := explain.Of(s)
		for _, f := range everyFigure(s) {
			w, ok := e.Why(f)
			if !ok {
				t.Errorf("%s: %+v is not explained", name, f)
				continue
			}
			met[f.What]++
			tol := 1e-5
			if w.Measure == why.Celsius {
				tol = 1e-4 // the balance is good to that
			}
			if got := w.Made(); math.Abs(got-w.Value) > tol*math.Max(1, math.Abs(w.Value)) {
				t.Errorf("%s: %s is %v, its explanation comes to %v from %+v", name, w.Name, w.Value, got, w.In)
			}
			if w.Name == "" || w.Says == "" || len(w.In) == 0 || !w.Standing.Known() {
				t.Errorf("%s: %+v says too little: %+v", name, f, w)
			}
			for _, in := range w.In {
				if in.Name == "" || in.Source == "" || !in.Standing.Known() || in.Source == "not known" {
					t.Errorf("%s: %s: input %+v says too little", name, w.Name, in)
				}
				if in.From == nil {
					continue
				}
				if of, ok := e.Why(*in.From); !ok || of.Value != in.Value || of.Measure != in.Measure {
					t.Errorf("%s: %s: input %+v is not that figure: %+v", name, w.Name, in, of)
				}
			}
		}
	}
	for _, n := range explain.FigureNames() {
		if met[n] == 0 && !strings.HasPrefix(n, "option.") && !strings.HasPrefix(n, "wish.") && !slices.Contains([]string{"unit.bus",
			"unit.stub", "unit.stubs"}, n) {
			t.Errorf("no loom here has a %s", n)
		}
	}
}

// The longest loop of a thin wire goes by its own diameter: one of 0.69 mm in a boot has no more than that beneath it.
func TestLoopOfAThinWire(t *testing.T) {
	boot := "[[termination]]\nid = \"P\"\ninsert = \"14-35\"\nboot = \"boot-straight-14\"\nloop_mm = 400.0\n"
	w, ok := explain.Figure(calctest.Ringed(t, 0.69, 0.02, 400, []int{1}, boot, ""), why.Figure{What: "loop.longest", Of: "P"})
	k := slices.IndexFunc(w.In, func(in why.Input) bool { return in.Name == "OD of the bundle" })
	if !ok || k < 0 || math.Abs(w.In[k].Value-0.69) > 1e-9 {
		t.Errorf("%v %+v", ok, w)
	}
}
