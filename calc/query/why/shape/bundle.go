package shape

import (
	"math"

	"contralay/calc/formula/lay"
	"contralay/calc/phase/bundle"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How the figures of a bundle are made.

func branchOver(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, _, b, ok := e.BranchAt(f.Of)
	if !ok || len(b.Layers) == 0 {
		return why.Why{}, false
	}
	k := len(b.Layers) - 1
	w := why.Why{Name: "OD of " + f.Of, Value: float64(b.OverMM), Measure: why.Diameter, Says: "It is the OD of its outermost layer",
		In: []why.Input{e.From("OD of "+model.LayerName(k), why.Figure{What: "layer.over", Of: f.Of, K: k})}, Formula: why.First}
	return asLearned(e, b, w), true
}

func branchLength(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, mb, _, ok := e.BranchAt(f.Of)
	if !ok {
		return why.Why{}, false
	}
	return why.Why{Name: "length of " + f.Of, Value: float64(mb.LengthMM), Measure: why.Length,
		Says: "It is measured along the centre line, from the datum of one end to the datum of the other. The datum of a breakout is its " +
			"centre",
		In: []why.Input{why.Given("length", float64(mb.LengthMM), why.Length)}, Formula: why.First}, true
}

func branchTape(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, _, b, ok := e.BranchAt(f.Of)
	if !ok || len(b.Layers) == 0 {
		return why.Why{}, false
	}
	k := len(b.Layers) - 1
	w := why.Why{Name: "tape diameter of " + f.Of, Value: float64(b.TapeMM), Measure: why.Diameter,
		Says:    "It is the tape diameter of its outermost layer",
		In:      []why.Input{e.From("tape diameter of "+model.LayerName(k), why.Figure{What: "layer.tape", Of: f.Of, K: k})},
		Formula: why.First}
	return asLearned(e, b, w), true
}

// band lays a branch once more with every wire at its smallest, or largest, in the
// order it has: what each layer stands on, its diameter and its hull.
func band(e why.Explainer, i int, size func(d sheet.Dia) unit.Millimetre) (beds []lay.Bed, stand []unit.Millimetre,
	thick []unit.Millimetre) {
	b := &e.Branches[i]
	var bed lay.Bed
	for k := range b.Layers {
		l := &b.Layers[k]
		var d []unit.Millimetre
		top := unit.Millimetre(0)
		for _, m := range l.Members {
			if k == 0 && m.Kind == sheet.OfFiller && m.X == 0 && m.Y == 0 && len(l.Members) == 6 {
				continue // the rod in the middle of five follows them
			}
			v := size(memberDia(e, m, l))
			d, top = append(d, v), max(top, v)
		}
		bind := b.As[k].BindMM.V
		var standsOn unit.Millimetre // of a layer that is laid on another
		switch {
		case b.Make != model.MakeLaid:
			g := lay.Pack(d)
			bed = lay.Bed{Crown: g.Over + bind, Tape: g.Tape + bind}
		case k == 0:
			g := lay.Centre(d)
			bed = lay.Bed{Crown: g.Over + bind, Tape: g.Tape + bind}
		default:
			r := lay.Lay(d, bed, lay.Laying{Ratio: e.Limits.LayRatio, Lay: b.As[k].LayMM.V, Bind: bind})
			standsOn = max(bed.Crown, 2*r.Inner)
			bed = lay.Bed{Crown: r.Over, Tape: r.Tape}
		}
		beds, stand, thick = append(beds, bed), append(stand, standsOn), append(thick, top)
	}
	return beds, stand, thick
}

// memberDia is a member's diameter with its band: a filler of a wire's own size is
// that wire.
func memberDia(e why.Explainer, m sheet.Member, l *sheet.Layer) sheet.Dia {
	if m.Kind != sheet.OfFiller {
		return e.Dia(m.ID)
	}
	for _, o := range l.Members {
		if o.Kind != sheet.OfFiller && math.Abs(float64(o.D-m.D)) < float64(sheet.SameSize) {
			return e.Dia(o.ID)
		}
	}
	return sheet.Dia{Nominal: m.D, Min: m.D, Max: m.D}
}

func branchBand(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, _, b, ok := e.BranchAt(f.Of)
	if !ok || len(b.Layers) == 0 {
		return why.Why{}, false
	}
	size, value, word := func(d sheet.Dia) unit.Millimetre { return d.Min }, b.OverMinMM, "smallest"
	switch f.What {
	case "branch.most":
		size, value, word = func(d sheet.Dia) unit.Millimetre { return d.Max }, b.OverMaxMM, "largest"
	case "branch.tapeleast":
		value = b.TapeMinMM
	}
	if b.Learned.Of != "" {
		return learnedBand(e, b, f, value, word), true
	}
	beds, stand, thick := band(e, i, size)
	k := len(beds) - 1
	from := catalogue.Origin{Source: "laid again with every wire at its " + word, Standing: b.Standing}
	bind, _ := binder(b, k)
	name := "OD of " + f.Of + " with every wire at its " + word
	if f.What == "branch.tapeleast" {
		return why.Why{Name: "tape diameter of " + f.Of + " with every wire at its smallest", Value: float64(value), Measure: why.Diameter,
			Says:    "It is the length of a tight string round the bundle, divided by pi",
			In:      []why.Input{why.LookUp("tape diameter at that size", float64(beds[k].Tape), why.Diameter, from)},
			Formula: why.First}, true
	}
	if k == 0 || b.Make != model.MakeLaid {
		return why.Why{Name: name, Value: float64(value), Measure: why.Diameter,
				Says:    "The pieces lie as close together as they can. Add the binder",
				In:      []why.Input{why.LookUp("OD of the group", float64(beds[k].Crown-b.As[k].BindMM.V), why.Diameter, from), bind},
				Formula: why.Sum},
			true
	}
	return why.Why{Name: name, Value: float64(value), Measure: why.Diameter,
		Says: "Add the inside diameter of the outermost layer, its thickest piece twice, and its binder. " +
			"All wires of a reel share its error",
		In: []why.Input{why.LookUp("inside diameter", float64(stand[k]), why.Diameter, from),
			why.LookUp("thickest piece", float64(thick[k]), why.Diameter, from), bind},
		Formula: func(in []float64) float64 { return in[0] + 2*in[1] + in[2] }}, true
}

func branchLaid(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, mb, b, ok := e.BranchAt(f.Of)
	if !ok || len(b.Layers) == 0 {
		return why.Why{}, false
	}
	w := why.Why{Name: "laid length of " + f.Of, Value: float64(b.LaidMM), Measure: why.Length,
		Says: "Take the length of the branch. At each breakout take off the sorted zone and one OD before it",
		In: []why.Input{why.Given("length of "+f.Of, float64(mb.LengthMM), why.Length),
			e.From("OD", why.Figure{What: "branch.over", Of: f.Of})}}
	for _, z := range bundle.Zones(e.Sheet, i) {
		w.In = append(w.In, why.Shop("zone", float64(z), why.Length, false))
	}
	w.Formula = func(in []float64) float64 {
		t := in[0]
		for _, z := range in[2:] {
			t -= math.Max(z, 0) + in[1]
		}
		return math.Max(t, 0)
	}
	return w, true
}

func branchBend(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, _, b, ok := e.BranchAt(f.Of)
	if !ok || b.Bend.MinMM <= 0 {
		return why.Why{}, false
	}
	var id string // of the thickest piece, in layer k
	var k int
	var d unit.Millimetre
	for n := range b.Layers {
		for _, m := range b.Layers[n].Members {
			if m.D > d {
				id, k, d = m.ID, n, m.D
			}
		}
	}
	practice := catalogue.Origin{Source: "rule, common practice", Standing: catalogue.Practice}
	comp := component(e, "thickest piece, "+id, why.Figure{Of: f.Of, K: k}, id)
	return why.Why{Name: "smallest inside bend of " + f.Of, Value: float64(b.Bend.MinMM), Measure: why.Length,
		Says: "It is ten times the thickest piece or six times the OD, whichever is more",
		In: []why.Input{comp, why.LookUp("factor on the thickest piece", 10, why.Times, practice),
			e.From("OD", why.Figure{What: "branch.over", Of: f.Of}),
			why.LookUp("factor on the OD", 6, why.Times, practice)},
		Formula: func(in []float64) float64 { return math.Max(in[0]*in[1], in[2]*in[3]) }}, true
}

func branchRoom(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, _, b, ok := e.BranchAt(f.Of)
	if !ok || len(b.Layers) < 2 {
		return why.Why{}, false
	}
	w := why.Why{Name: "room in " + f.Of, Measure: why.Count, Says: "Add the room of its layers", Formula: why.Sum}
	for k := range b.Layers {
		w.Value += float64(b.Layers[k].Room)
		if k > 0 {
			w.In = append(w.In, e.From(model.LayerName(k), why.Figure{What: "layer.room", Of: f.Of, K: k}))
		}
	}
	return w, true
}
