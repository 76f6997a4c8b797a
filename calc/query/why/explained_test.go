package why

import (
	"math"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
)

// A figure is explained once, with the weakest standing of its inputs: "sum" is 2 as published and 3 from a figure of practice. None is
// there
// that nobody makes, that is refused, has no formula, is no number, or explains itself by itself; an input of such a figure is a value
// alone.
func TestExplainedOnce(t *testing.T) {
	made := map[string]int{}
	figure := func(name string, value float64, formula func([]float64) float64, in func(e Explainer) []Input) Maker {
		return func(e Explainer, _ Figure) (Why, bool) {
			made[name]++
			return Why{Name: name, Value: value, In: in(e), Formula: formula}, name != "refused"
		}
	}
	none := func(Explainer) []Input { return nil }
	practice := func(Explainer) []Input { return []Input{Shop("three", 3, Length, false)} }
	e := New(&sheet.Sheet{}, map[string]Maker{
		"three": figure("three", 3, First, practice), "refused": figure("refused", 1, First, none), "bare": figure("bare", 1, nil, none),
		"endless": figure("endless", math.Inf(1), First, none), "nan": figure("nan", math.NaN(), First, none),
		"sum": figure("sum", 5, Sum, func(e Explainer) []Input {
			return []Input{Exact("two", 2, Length), e.From("three",
				Figure{What: "three"})}
		}),
		"self": figure("self", 1, First, func(e Explainer) []Input { return []Input{e.From("self", Figure{What: "self"})} }),
		"gone": figure("gone", 1, First, func(Explainer) []Input { return []Input{{Name: "x", Value: 7, From: &Figure{What: "refused"}}} }),
	})
	for range 2 {
		for _, what := range []string{"nobody", "refused", "bare", "endless", "nan"} {
			if w, ok := e.Why(Figure{What: what}); ok || w.Name != "" {
				t.Errorf("%s: %+v", what, w)
			}
		}
		w, ok := e.Why(Figure{What: "sum"})
		if !ok || w.Standing != catalogue.Practice || w.Figure.What != "sum" || w.Made() != 5 {
			t.Errorf("%+v", w)
		}
		if in := w.In[1]; in.From == nil || in.Source != "worked out" || in.Standing != catalogue.Practice || in.Value != 3 {
			t.Errorf("%+v", in)
		}
	}
	for what, n := range made {
		if n != 1 {
			t.Errorf("%s is made %d times", what, n)
		}
	}
	if w, ok := e.Why(Figure{What: "self"}); !ok || w.In[0].From != nil || w.In[0].Source != "not known" || w.Standing != catalogue.Memory {
		t.Errorf("%+v", w)
	}
	if w, ok := e.Why(Figure{What: "gone"}); !ok || w.In[0].From != nil || w.In[0].Value != 7 {
		t.Errorf("%+v", w)
	}
}

// Where inputs come from, by hand: the file, a rule that the file gives or not, a catalogue, geometry.
func TestWhereInputsComeFrom(t *testing.T) {
	from := catalogue.Origin{Source: "a sheet", Standing: catalogue.Published}
	for _, c := range []struct {
		in       Input
		source   string
		standing catalogue.Standing
	}{{Given("x", 2, Length), "given in the file", catalogue.House}, {Shop("x", 2, Length, true), "rule of this shop", catalogue.House},
		{Shop("x", 2, Length, false), "rule, common practice", catalogue.Practice}, {LookUp("x", 2, Length, from), "a sheet",
			catalogue.Published},
		{Exact("x", 2, Length), "geometry", catalogue.Published}} {
		if c.in.Name != "x" || c.in.Value != 2 || c.in.Measure != Length || c.in.From != nil || c.in.Source != c.source ||
			c.in.Standing != c.standing {
			t.Errorf("%+v, want %s, %s", c.in, c.source, c.standing)
		}
	}
}

// A branch by its id, and a layer of it by its number from the centre.
func TestBranchAndLayer(t *testing.T) {
	s := &sheet.Sheet{H: &model.Harness{Branches: []model.Branch{{ID: "L"}, {ID: "T"}}},
		Branches: []sheet.Branch{{}, {Layers: []sheet.Layer{{OverMM: 1}, {OverMM: 2}}}}}
	e := New(s, nil)
	if i, b, out, ok := e.BranchAt("T"); !ok || i != 1 || b.ID != "T" || len(out.Layers) != 2 {
		t.Errorf("%v %+v", i, b)
	}
	if _, b, out, ok := e.BranchAt("X"); ok || b != nil || out != nil {
		t.Error("a branch that is not there")
	}
	for k, want := range map[int]bool{-1: false, 0: true, 1: true, 2: false} {
		i, b, l, ok := e.LayerAt(Figure{Of: "T", K: k})
		if ok != want || ok && (i != 1 || b != &s.Branches[1] || l != &s.Branches[1].Layers[k]) || !ok && (b != nil || l != nil) {
			t.Errorf("layer %d: %v", k, ok)
		}
	}
	if _, _, _, ok := e.LayerAt(Figure{Of: "X"}); ok {
		t.Error("a layer of no branch")
	}
}
