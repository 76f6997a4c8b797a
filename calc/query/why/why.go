package why

import (
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Figure names one figure of a sheet. Which of the fields count depends on What;
// explain.FigureNames lists them.
type Figure struct {
	What string // "layer.over", "tube.slide", "wire.cut" …
	Of   string // id of the branch, wire, unit or termination it is about
	K    int    // layer or option
	Part string // tube, component, or which piece
}

// Measure is what a value of an explanation measures, which says how it is shown.
type Measure int

// The measures.
const (
	Diameter Measure = iota // mm across
	Length                  // mm along
	Mass                    // g
	PerMetre                // g/m
	Volts
	Amperes
	Celsius
	OhmsPerKm
	WattsPerM
	Ohms
	Squares // mm²
	Seconds
	Withstands // A²s
	Times      // a pure number
	Percent    // a share
	Count
)

// Input is one value a figure is made from.
type Input struct {
	Name    string
	Value   float64
	Measure Measure
	From    *Figure // where it is worked out, or nil: given or looked up
	catalogue.Origin
}

// Why is how one figure was made: a formula in words and the inputs it takes.
type Why struct {
	Figure   Figure
	Name     string // "over of layer 2 of T1"
	Value    float64
	Measure  Measure
	Says     string // the formula in words
	In       []Input
	Standing catalogue.Standing // that of its weakest input
	Most     string             // what would change it most; "" where nothing stands out

	Formula func(in []float64) float64 // of the values of In, in their order
}

// Made works the formula out on the inputs alone: it gives the figure, or the
// explanation is wrong.
func (w Why) Made() float64 {
	in := make([]float64, len(w.In))
	for k, i := range w.In {
		in[k] = i.Value
	}
	return w.Formula(in)
}

// LookedUp explains a figure that is only looked up.
func LookedUp(name string, v float64, m Measure, from catalogue.Origin) Why {
	return Stated(name, "the catalogue gives this value", v, m, from)
}

// Stated explains a figure that says itself where it comes from.
func Stated(name, says string, v float64, m Measure, from catalogue.Origin) Why {
	return Why{Name: name, Value: v, Measure: m, Says: says, In: []Input{LookUp(name, v, m, from)}, Standing: from.Standing, Formula: First}
}

// Explainer keeps what is explained already: a cut length asks for the same layers
// over and over.
type Explainer struct {
	*sheet.Sheet
	makers map[string]Maker
	known  map[Figure]*Why // nil: no such figure, or it is being explained
}

// Maker explains one figure of a sheet; false where the sheet has none such.
type Maker func(Explainer, Figure) (Why, bool)

// New explains the figures of a sheet by makers, one for each name of a figure.
func New(s *sheet.Sheet, makers map[string]Maker) Explainer {
	return Explainer{s, makers, map[Figure]*Why{}}
}

// Why explains a figure, or takes the explanation that is known; false where there is none.
func (e Explainer) Why(f Figure) (Why, bool) {
	if w, ok := e.known[f]; ok {
		if w == nil {
			return Why{}, false
		}
		return *w, true
	}
	e.known[f] = nil
	how, ok := e.makers[f.What]
	if !ok {
		return Why{}, false
	}
	w, ok := how(e, f)
	if !ok || w.Formula == nil || !unit.Finite(w.Value) {
		return Why{}, false
	}
	w.Figure, w.Standing = f, catalogue.House
	for k := range w.In {
		in := &w.In[k]
		if in.From != nil {
			if sub, ok := e.Why(*in.From); ok {
				in.Origin = catalogue.Origin{Source: "worked out", Standing: sub.Standing}
			} else {
				in.From = nil
			}
		}
		w.Standing = catalogue.Weakest(w.Standing, in.Standing)
	}
	e.known[f] = &w
	return w, true
}

// Given is an input that stands in the harness's file.
func Given(name string, v float64, m Measure) Input {
	return Input{Name: name, Value: v, Measure: m, Origin: catalogue.Origin{Source: "given in the file", Standing: catalogue.House}}
}

// Shop is an input that is a rule: the shop's own where the file gives it.
func Shop(name string, v float64, m Measure, ownRule bool) Input {
	if ownRule {
		return Input{Name: name, Value: v, Measure: m, Origin: catalogue.Origin{Source: "rule of this shop", Standing: catalogue.House}}
	}
	return Input{Name: name, Value: v, Measure: m, Origin: catalogue.Origin{Source: "rule, common practice", Standing: catalogue.Practice}}
}

// LookUp is an input out of the catalogue, or otherwise looked up.
func LookUp(name string, v float64, m Measure, from catalogue.Origin) Input {
	return Input{Name: name, Value: v, Measure: m, Origin: from}
}

// Exact is an input that geometry or a definition gives.
func Exact(name string, v float64, m Measure) Input {
	return Input{Name: name, Value: v, Measure: m, Origin: catalogue.Origin{Source: "geometry", Standing: catalogue.Published}}
}

// From is an input that is a figure of its own.
func (e Explainer) From(name string, f Figure) Input {
	w, ok := e.Why(f)
	if !ok {
		return Input{Name: name, Origin: catalogue.Origin{Source: "not known", Standing: catalogue.Memory}}
	}
	return Input{Name: name, Value: w.Value, Measure: w.Measure, From: &f}
}

// BranchAt is a branch by its id.
func (e Explainer) BranchAt(id string) (int, *model.Branch, *sheet.Branch, bool) {
	i := slices.IndexFunc(e.H.Branches, func(b model.Branch) bool { return b.ID == id })
	if i < 0 {
		return 0, nil, nil, false
	}
	return i, &e.H.Branches[i], &e.Branches[i], true
}

// LayerAt is a layer of a branch as it lies.
func (e Explainer) LayerAt(f Figure) (int, *sheet.Branch, *sheet.Layer, bool) {
	i, _, b, ok := e.BranchAt(f.Of)
	if !ok || f.K < 0 || f.K >= len(b.Layers) {
		return 0, nil, nil, false
	}
	return i, b, &b.Layers[f.K], true
}

// Sum is the formula of inputs that are added up.
func Sum(in []float64) float64 {
	t := 0.0
	for _, v := range in {
		t += v
	}
	return t
}

// First is the formula of a figure that is its only input.
func First(in []float64) float64 { return in[0] }

// MemberAt is a component where it lies in a branch.
func (e Explainer) MemberAt(branch, id string) (b *sheet.Branch, k int, m sheet.Member, ok bool) {
	_, _, b, ok = e.BranchAt(branch)
	if !ok {
		return nil, 0, sheet.Member{}, false
	}
	for k := range b.Layers {
		for _, m := range b.Layers[k].Members {
			if m.ID == id {
				return b, k, m, true
			}
		}
	}
	return nil, 0, sheet.Member{}, false
}
