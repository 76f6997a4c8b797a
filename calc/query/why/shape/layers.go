package shape

import (
	"fmt"
	"math"

	"contralay/calc/formula/lay"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How the figures of a layer are made.

func layerOver(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, b, l, ok := e.LayerAt(f)
	if !ok {
		return why.Why{}, false
	}
	w := why.Why{Name: fmt.Sprintf("OD of %s of %s", model.LayerName(f.K), f.Of), Value: float64(l.OverMM), Measure: why.Diameter}
	bind, tape := binder(b, f.K)
	if b.Make == model.MakeLaid && f.K > 0 {
		w.Says = "Take the larger of two: the inside diameter of the layer, and the OD of the layer below. Add its thickest piece twice, " +
			"and " + tape
		w.In = []why.Input{e.From("inside diameter", why.Figure{What: "layer.stand", Of: f.Of, K: f.K}),
			e.From("OD of the layer below", why.Figure{What: "layer.over", Of: f.Of, K: f.K - 1}),
			component(e, "thickest piece, "+thickest(l), f, thickest(l)), bind}
		w.Formula = func(in []float64) float64 { return math.Max(in[0], in[1]) + 2*in[2] + in[3] }
		return w, true
	}
	if len(l.Members) == 1 {
		id := l.Members[0].ID
		w.Says = "Take the one piece and add " + tape
		w.In = []why.Input{e.From(id, why.Figure{What: "component.over", Of: f.Of, Part: id}), bind}
		w.Formula = why.Sum
		return w, true
	}
	id, far := furthest(l)
	w.Says = "Take twice the reach of the outermost piece from the axis, and add " + tape + ". The pieces touch and lie in the smallest " +
		"circle that holds them"
	w.In = []why.Input{why.Exact(id+", distance from the axis", far, why.Diameter), component(e, "its diameter", f, id), bind}
	w.Formula = func(in []float64) float64 { return 2*in[0] + in[1] + in[2] }
	return w, true
}

// binder is what tape or thread adds to layer k, and what it is called there.
func binder(b *sheet.Branch, k int) (why.Input, string) {
	if b.Layers[k].BuiltMM > 0 {
		return why.Given("tape that builds it up", float64(b.Layers[k].BuiltMM), why.Diameter), "the tape that builds it up"
	}
	return why.Given("binder", float64(b.As[k].BindMM.V), why.Diameter), "the binder"
}

// thickest is the id of a layer's thickest component.
func thickest(l *sheet.Layer) string {
	id, d := "", unit.Millimetre(0)
	for _, m := range l.Members {
		if m.D > d {
			id, d = m.ID, m.D
		}
	}
	return id
}

// furthest is the component that reaches furthest from the axis.
func furthest(l *sheet.Layer) (id string, off float64) {
	reach := -1.0
	for _, m := range l.Members {
		r := math.Hypot(float64(m.X), float64(m.Y))
		if r+float64(m.D)/2 > reach {
			id, off, reach = m.ID, r, r+float64(m.D)/2
		}
	}
	return id, off
}

// component is the diameter of what lies in layer f.K of a branch.
func component(e why.Explainer, name string, f why.Figure, id string) why.Input {
	if id == "filler" {
		return e.From(name, why.Figure{What: "layer.filler", Of: f.Of, K: f.K})
	}
	return e.From(name, why.Figure{What: "component.over", Of: f.Of, K: f.K, Part: id})
}

// closing is the inputs that decide on what radius a layer closes: its bed, its
// lay length, then the diameters in the order they lie; and the radius at which the
// angles that neighbours take add up to a turn, found by halving.
func closing(e why.Explainer, f why.Figure, b *sheet.Branch, l *sheet.Layer) ([]why.Input, func(in []float64) float64) {
	in := []why.Input{e.From("tape diameter below", why.Figure{What: "layer.tape", Of: f.Of, K: f.K - 1}),
		e.From("lay length", why.Figure{What: "layer.lay", Of: f.Of, K: f.K})}
	for _, m := range l.Members {
		in = append(in, component(e, m.ID, f, m.ID))
	}
	return in, func(in []float64) float64 {
		bed, turn, d := in[0], in[1], in[2:]
		if len(d) < 3 {
			return bed
		}
		total := func(r float64) float64 {
			t := 0.0
			for k := range d {
				t += float64(lay.NeighbourAngle(unit.Millimetre(d[k]), unit.Millimetre(d[(k+1)%len(d)]), unit.Millimetre(r),
					unit.Millimetre(turn)))
			}
			return t
		}
		lo, hi := bed/2, bed/2+why.Sum(d)
		if total(lo) <= 2*math.Pi {
			return bed
		}
		for range 80 {
			if mid := (lo + hi) / 2; total(mid) > 2*math.Pi {
				lo = mid
			} else {
				hi = mid
			}
		}
		return 2 * hi
	}
}

func layerStand(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, b, l, ok := e.LayerAt(f)
	if !ok || f.K == 0 || b.Make != model.MakeLaid || !l.Closes {
		return why.Why{}, false
	}
	in, make := closing(e, f, b, l)
	return why.Why{Name: fmt.Sprintf("inside diameter of %s of %s", model.LayerName(f.K), f.Of), Value: float64(l.BedMM + 2*l.ProudMM),
		Measure: why.Diameter,
		Says: "If the angles between neighbours add up to one turn or less on the tape diameter below, it is that diameter. If not, " +
			"it is the diameter at which they add up to one turn. Tan of half an angle is the root of a e / (r (r + a + e)), divided by " +
			"the cosine of the lay angle. a and e are the radii of two neighbours, r is half the inside diameter",
		In: in, Formula: make}, true
}

func layerProud(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, b, l, ok := e.LayerAt(f)
	if !ok || f.K == 0 || b.Make != model.MakeLaid || !l.Closes {
		return why.Why{}, false
	}
	return why.Why{Name: fmt.Sprintf("how proud %s of %s stands", model.LayerName(f.K), f.Of), Value: float64(l.ProudMM),
		Measure: why.Diameter,
		Says:    "Take half the difference between its inside diameter and the tape diameter below",
		In: []why.Input{e.From("inside diameter", why.Figure{What: "layer.stand", Of: f.Of, K: f.K}),
			e.From("tape diameter below", why.Figure{What: "layer.tape", Of: f.Of, K: f.K - 1})},
		Formula: func(in []float64) float64 { return (in[0] - in[1]) / 2 }}, true
}

func layerGap(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, b, l, ok := e.LayerAt(f)
	if !ok || f.K == 0 || b.Make != model.MakeLaid || !l.Closes || len(l.Members) < 3 {
		return why.Why{}, false
	}
	in, _ := closing(e, f, b, l)
	in[0] = e.From("inside diameter", why.Figure{What: "layer.stand", Of: f.Of, K: f.K})
	return why.Why{Name: fmt.Sprintf("how much of %s of %s is open", model.LayerName(f.K), f.Of), Value: float64(l.Gap),
		Measure: why.Percent,
		Says:    "The angles between neighbours leave this share of one turn open",
		In:      in, Formula: func(in []float64) float64 {
			d, t := in[2:], 0.0
			for k := range d {
				t += float64(lay.NeighbourAngle(unit.Millimetre(d[k]), unit.Millimetre(d[(k+1)%len(d)]), unit.Millimetre(in[0]/2),
					unit.Millimetre(in[1])))
			}
			return math.Max(0, 1-t/(2*math.Pi))
		}}, true
}

// layerTape's hull is worked out by Cauchy's formula, the mean of the widths.
func layerTape(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, b, l, ok := e.LayerAt(f)
	if !ok {
		return why.Why{}, false
	}
	bind, tape := binder(b, f.K)
	w := why.Why{Name: fmt.Sprintf("tape diameter of %s of %s", model.LayerName(f.K), f.Of), Value: float64(l.TapeMM),
		Measure: why.Diameter,
		Says: "It is the length of a tight string round the layer, divided by pi (the mean of its widths), and " + tape + ". The values " +
			"below are the distance of each piece from the axis, and its diameter"}
	type point struct{ x, y float64 }
	var dir []point
	radius := 0.0
	if f.K > 0 && b.Make == model.MakeLaid {
		radius = float64(b.Layers[f.K-1].TapeMM)
	}
	w.In = append(w.In, bind,
		why.Exact("diameter beneath it", radius, why.Diameter))
	for _, m := range l.Members {
		r := math.Hypot(float64(m.X), float64(m.Y))
		a := point{1, 0}
		if r > 0 {
			a = point{float64(m.X) / r, float64(m.Y) / r}
		}
		dir = append(dir, a)
		w.In = append(w.In, why.Exact(m.ID+", distance from the axis", r, why.Diameter),
			why.Exact("its diameter", float64(m.D), why.Diameter))
	}
	w.In[0].Standing = b.Standing // as far as its wires can be trusted
	w.Formula = func(in []float64) float64 {
		const steps = 7200
		t := 0.0
		for n := range steps {
			s, c := math.Sincos(2 * math.Pi * float64(n) / steps)
			reach := in[1] / 2
			for k, a := range dir {
				reach = math.Max(reach, in[2+2*k]*(a.x*c+a.y*s)+in[3+2*k]/2)
			}
			t += reach
		}
		return 2*t/steps + in[0]
	}
	return w, true
}

func layerLay(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, b, l, ok := e.LayerAt(f)
	if !ok || l.LayMM <= 0 {
		return why.Why{}, false
	}
	w := why.Why{Name: fmt.Sprintf("lay length of %s of %s", model.LayerName(f.K), f.Of), Value: float64(l.LayMM), Measure: why.Length}
	if v := b.As[f.K].LayMM.V; v > 0 {
		w.Says, w.In, w.Formula = "It is set on the layer", []why.Input{why.Given("lay length", float64(v), why.Length)}, why.First
		return w, true
	}
	// The diameter is an input and not a figure of its own here: it is found
	// together with the lay length, each from the other.
	w.Says = "Multiply the lay ratio by the OD. Both are found together"
	w.In = []why.Input{why.Shop("lay ratio", float64(e.Limits.LayRatio), why.Times, e.H.Rules.LayRatio.Set),
		why.LookUp("OD of "+model.LayerName(f.K), float64(l.OverMM), why.Diameter,
			catalogue.Origin{Source: "worked out", Standing: b.Standing})}
	w.Formula = func(in []float64) float64 { return in[0] * in[1] }
	return w, true
}

func layerTurns(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, _, l, ok := e.LayerAt(f)
	if !ok || l.LayMM <= 0 {
		return why.Why{}, false
	}
	return why.Why{Name: fmt.Sprintf("turns of %s of %s", model.LayerName(f.K), f.Of), Value: float64(l.Turns), Measure: why.Times,
		Says: "Divide the laid length by the lay length",
		In: []why.Input{e.From("laid length", why.Figure{What: "branch.laid", Of: f.Of}),
			e.From("lay length", why.Figure{What: "layer.lay", Of: f.Of, K: f.K})},
		Formula: func(in []float64) float64 { return in[0] / in[1] }}, true
}

// layerTakes and layerRoom try one more and one more again.
func layerRoom(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, b, l, ok := e.LayerAt(f)
	if !ok || f.K == 0 || b.Make != model.MakeLaid {
		return why.Why{}, false
	}
	size := unit.Millimetre(0)
	for _, m := range l.Members {
		if m.Kind != sheet.OfFiller && (size == 0 || m.D < size) {
			size = m.D
		}
	}
	if size == 0 {
		size = l.FillerMM
	}
	lift := func(n int) float64 { // with n more
		var d []unit.Millimetre
		for _, m := range l.Members {
			d = append(d, m.D)
		}
		for range n {
			d = append(d, size)
		}
		p := b.Layers[f.K-1]
		r := lay.LayZigZag(d, lay.Bed{Crown: p.OverMM, Tape: p.TapeMM},
			lay.Laying{Ratio: e.Limits.LayRatio, Lay: b.As[f.K].LayMM.V, Bind: b.As[f.K].BindMM.V})
		return float64(r.Lift)
	}
	from := catalogue.Origin{Source: "laid again to try", Standing: b.Standing}
	return why.Why{Name: fmt.Sprintf("room in %s of %s", model.LayerName(f.K), f.Of), Value: float64(l.Room), Measure: why.Count,
		Says: "So many more of its thinnest piece can go in and the layer still closes: it stands proud by no more than the allowed " +
			"share of a piece",
		In: []why.Input{why.Shop("allowed share", float64(e.Limits.LiftMax), why.Percent, e.H.Rules.LiftMax.Set),
			{Name: "pieces added", Value: float64(l.Room), Measure: why.Count, Origin: from},
			why.LookUp("share with those added", lift(l.Room), why.Percent, from),
			why.LookUp("share with one piece more", lift(l.Room+1), why.Percent, from)},
		Formula: func(in []float64) float64 {
			const hair = 1e-9
			if in[1] > 0 && in[2] > in[0]+hair || in[3] <= in[0]-hair {
				return -1 // the search stopped too early or too late
			}
			return in[1]
		}}, true
}

func layerTakes(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, b, l, ok := e.LayerAt(f)
	if !ok || f.K == 0 || b.Make != model.MakeLaid {
		return why.Why{}, false
	}
	w := why.Why{Name: fmt.Sprintf("pieces that %s of %s can hold", model.LayerName(f.K), f.Of), Value: float64(l.Takes),
		Measure: why.Count}
	if l.Takes >= len(l.Members) {
		w.Says = "Add the pieces it holds, with fillers, and the room that is left"
		w.In = []why.Input{why.Given("pieces it holds", float64(len(l.Members)), why.Count),
			e.From("room", why.Figure{What: "layer.room", Of: f.Of, K: f.K})}
		w.Formula = why.Sum
		return w, true
	}
	w.Says = "Take the pieces it holds. Take out its thinnest one by one until the rest closes"
	w.In = []why.Input{why.Given("pieces it holds", float64(len(l.Members)), why.Count),
		why.LookUp("too many", float64(len(l.Members)-l.Takes), why.Count,
			catalogue.Origin{Source: "laid again to try", Standing: b.Standing})}
	w.Formula = func(in []float64) float64 { return in[0] - in[1] }
	return w, true
}

func layerBent(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, _, l, ok := e.LayerAt(f)
	if !ok || l.FlatMM <= 0 || !e.H.Branches[i].BendMM.Set || !e.H.Branches[i].BendDeg.Set {
		return why.Why{}, false
	}
	mb := &e.H.Branches[i]
	id, off := "", 0.0
	for _, m := range l.Members {
		if r := math.Hypot(float64(m.X), float64(m.Y)); r >= off {
			id, off = m.ID, r
		}
	}
	in := []why.Input{why.Exact(id+", distance from the axis", off, why.Diameter),
		why.Given("bend, degrees", float64(mb.BendDeg.V), why.Times)}
	if f.What == "layer.flat" {
		return why.Why{Name: fmt.Sprintf("path difference of %s of %s if it were laid straight", model.LayerName(f.K), f.Of),
			Value: float64(l.FlatMM), Measure: why.Diameter,
			Says: "Take twice its distance from the axis, times the bend in radians", In: in,
			Formula: func(in []float64) float64 { return 2 * in[0] * in[1] * math.Pi / 180 }}, true
	}
	in = append(in, why.Given("inside bend radius", float64(mb.BendMM.V), why.Length),
		e.From("OD", why.Figure{What: "branch.over", Of: f.Of}))
	if l.LayMM <= 0 {
		return why.Why{}, false
	}
	in = append(in, e.From("lay length", why.Figure{What: "layer.lay", Of: f.Of, K: f.K}))
	return why.Why{Name: fmt.Sprintf("path difference in the bend of %s of %s", model.LayerName(f.K), f.Of), Value: float64(l.BentMM),
		Measure: why.Diameter,
		Says: "Round the bend the wires of the layer differ by this length: 2 r / rho times the cosine of the lay angle, times L / " +
			"pi, times the sine of pi S / L. rho is the bend radius on the bundle's axis, S the arc there. If whole turns fit into the " +
			"bend, there is no difference", In: in,
		Formula: func(in []float64) float64 {
			r, rho, L := in[0], in[2]+in[3]/2, in[4]
			s := rho * in[1] * math.Pi / 180
			return 2 * r / rho / math.Hypot(1, 2*math.Pi*r/L) * L / math.Pi * math.Abs(math.Sin(math.Pi*s/L))
		}}, true
}

func layerFiller(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, b, l, ok := e.LayerAt(f)
	if !ok || l.Fillers == 0 || l.FillerMM <= 0 {
		return why.Why{}, false
	}
	w := why.Why{Name: fmt.Sprintf("filler of %s of %s", model.LayerName(f.K), f.Of), Value: float64(l.FillerMM), Measure: why.Diameter,
		Formula: why.First}
	if v := b.As[f.K].FillerMM.V; v > 0 {
		w.Says, w.In = "It is set on the layer", []why.Input{why.Given("filler", float64(v), why.Diameter)}
		return w, true
	}
	for _, m := range l.Members {
		if m.Kind != sheet.OfFiller && m.D == l.FillerMM {
			w.Says, w.In = "It is the layer's thinnest wire, from the same reel",
				[]why.Input{e.From(m.ID, why.Figure{What: "component.over", Of: f.Of, K: f.K, Part: m.ID})}
			return w, true
		}
	}
	if len(l.Members) == 6 && f.K == 0 {
		w.Says = "It is the rod round which five equal pieces close"
		w.In = []why.Input{e.From(l.Members[0].ID, why.Figure{What: "component.over", Of: f.Of, Part: l.Members[0].ID}),
			why.Exact("factor of a rod among five", float64(lay.RodOfFive), why.Times)}
		w.Formula = func(in []float64) float64 { return in[0] * in[1] }
		return w, true
	}
	return why.Why{}, false
}
