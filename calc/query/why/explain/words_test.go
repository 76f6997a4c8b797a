package explain_test

import (
	"math"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/why/explain"
	"contralay/model"
	"contralay/model/unit"
)

// A formula reads whole, and each of its inputs counts: in some figure of its kind another value of it makes another figure. With a
// binder on
// each layer, and a centre that is built up.
func TestEachInputCounts(t *testing.T) {
	idle, moves, met := map[string]bool{}, map[string]bool{}, map[string]int{}
	for _, name := range []string{"example", "built-up"} {
		h := calctest.Load(t, name+".toml")
		s := calc.Complete(h, calctest.Catalogue(t), nil)
		if name == "example" { // each layer with a binder, and fillers in the outermost
			h = s.H
			for i := range h.Branches {
				if len(s.Branches[i].As) < 2 {
					continue
				}
				as := model.CloneLayers(s.Branches[i].As)
				for k := range as {
					as[k].BindMM = model.Some(unit.Millimetre(0.1 + float64(k)/20))
				}
				h = h.EditBranch(i, func(b *model.Branch) { b.Layers, b.Make = as, model.Some(model.MakeLaid) })
			}
			s = calc.Build(h, s.Base, s)
		}
		e := explain.Of(s)
		for _, f := range everyFigure(s) {
			w, ok := e.Why(f)
			if !ok {
				continue
			}
			texts := []string{w.Name, w.Says}
			for _, in := range w.In {
				texts = append(texts, in.Name)
				for _, what := range []string{"sheath near it", "air outside"} {
					if strings.Contains(in.Name, what) {
						moves[what] = true
					}
				}
			}
			for _, text := range texts {
				for _, bad := range []string{"  ", " .", " ,", "and .", "of .", ", .", "%!"} {
					if strings.Contains(text, bad) {
						t.Errorf("%s: %q does not read whole", name, text)
					}
				}
				if text == "" || strings.TrimSpace(text) != text || strings.HasSuffix(text, " and") || strings.HasSuffix(text, ",") {
					t.Errorf("%s: %+v: %q does not read whole", name, f, text)
				}
			}
			if met[name+f.What]++; met[name+f.What] > 4 {
				continue
			}
			was := w.Made()
			for k := range w.In {
				keep, moved := w.In[k].Value, false
				for _, v := range []float64{keep*1.5 + 11, keep * 0.5, 0, -5, 1e6} {
					w.In[k].Value = v
					got := w.Made()
					moved = moved || math.Abs(got-was) > 1e-9*math.Abs(was)
				}
				w.In[k].Value = keep
				words := strings.Fields(w.In[k].Name) // without the ids behind them
				what := f.What + ": " + strings.Join(words[:min(2, len(words))], " ")
				if moved {
					moves[what] = true
				} else {
					idle[what] = true
				}
			}
		}
	}
	if !moves["sheath near it"] {
		t.Error("nothing is told to lie near a sheath")
	}
	for what := range idle {
		if !moves[what] {
			t.Errorf("nothing hangs on %s", what)
		}
	}
}
