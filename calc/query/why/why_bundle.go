package why

import (
	"math"

	"contralay/calc/formula/lay"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How the figures of a bundle are made.

func (e Explainer) branchOver(f Figure) (Why, bool) {
	_, _, b, ok := e.branchAt(f.Of)
	if !ok || len(b.Layers) == 0 {
		return Why{}, false
	}
	k := len(b.Layers) - 1
	w := Why{Name: "over of " + f.Of, Value: float64(b.OverMM), Measure: Diameter, Says: "over its outermost layer",
		In: []Input{e.from("over of "+model.LayerName(k), Figure{What: "layer.over", Of: f.Of, K: k})}, make: first0}
	return e.asLearned(b, w), true
}

func (e Explainer) branchLength(f Figure) (Why, bool) {
	_, mb, _, ok := e.branchAt(f.Of)
	if !ok {
		return Why{}, false
	}
	return Why{Name: "length of " + f.Of, Value: float64(mb.LengthMM), Measure: Length,
		Says: "along the centre line, from the datum of one end to that of the other; the centre of a breakout",
		In:   []Input{given("length", float64(mb.LengthMM), Length)}, make: first0}, true
}

func (e Explainer) branchTape(f Figure) (Why, bool) {
	_, _, b, ok := e.branchAt(f.Of)
	if !ok || len(b.Layers) == 0 {
		return Why{}, false
	}
	k := len(b.Layers) - 1
	w := Why{Name: "tape diameter of " + f.Of, Value: float64(b.TapeMM), Measure: Diameter, Says: "that of its outermost layer",
		In: []Input{e.from("tape diameter of "+model.LayerName(k), Figure{What: "layer.tape", Of: f.Of, K: k})}, make: first0}
	return e.asLearned(b, w), true
}

// band lays a branch once more with every wire at its smallest, or largest, in the
// order it has: what each layer stands on, its diameter and its hull.
func (e Explainer) band(i int, size func(d sheet.Dia) unit.Millimetre) (beds []lay.Bed, stand []unit.Millimetre, thick []unit.Millimetre) {
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
			v := size(e.memberDia(m, l))
			d, top = append(d, v), max(top, v)
		}
		bind := b.As[k].BindMM.V
		on := unit.Millimetre(0)
		switch {
		case b.Make != model.MakeLaid:
			g := lay.Pack(d)
			bed = lay.Bed{Crown: g.Over + bind, Tape: g.Tape + bind}
		case k == 0:
			g := lay.Centre(d)
			bed = lay.Bed{Crown: g.Over + bind, Tape: g.Tape + bind}
		default:
			r := lay.Lay(d, bed, lay.Laying{Ratio: e.Limits.LayRatio, Lay: b.As[k].LayMM.V, Bind: bind})
			on = max(bed.Crown, 2*r.Inner)
			bed = lay.Bed{Crown: r.Over, Tape: r.Tape}
		}
		beds, stand, thick = append(beds, bed), append(stand, on), append(thick, top)
	}
	return beds, stand, thick
}

// memberDia is a member's diameter with its band: a filler of a wire's own size is
// that wire.
func (e Explainer) memberDia(m sheet.Member, l *sheet.Layer) sheet.Dia {
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

func (e Explainer) branchBand(f Figure) (Why, bool) {
	i, _, b, ok := e.branchAt(f.Of)
	if !ok || len(b.Layers) == 0 {
		return Why{}, false
	}
	size, value, word := func(d sheet.Dia) unit.Millimetre { return d.Min }, b.OverMinMM, "smallest"
	switch f.What {
	case "branch.most":
		size, value, word = func(d sheet.Dia) unit.Millimetre { return d.Max }, b.OverMaxMM, "largest"
	case "branch.tapeleast":
		value = b.TapeMinMM
	}
	if b.Learned.Of != "" {
		return e.learnedBand(b, f, value, word), true
	}
	beds, stand, thick := e.band(i, size)
	k := len(beds) - 1
	from := catalogue.Origin{Source: "laid once more with every wire at its " + word, Standing: b.Standing}
	bind := given("binder", float64(b.As[k].BindMM.V), Diameter)
	name := "over of " + f.Of + " with every wire at its " + word
	if f.What == "branch.tapeleast" {
		return Why{Name: "tape diameter of " + f.Of + " with every wire at its smallest", Value: float64(value), Measure: Diameter,
			Says: "a tight string round it, divided by pi", In: []Input{known("tape diameter then", float64(beds[k].Tape), Diameter, from)},
			make: first0}, true
	}
	if k == 0 || b.Make != model.MakeLaid {
		return Why{Name: name, Value: float64(value), Measure: Diameter, Says: "the group packed as close as it goes, and its binder",
			In: []Input{known("group", float64(beds[k].Crown-b.As[k].BindMM.V), Diameter, from), bind}, make: sum}, true
	}
	return Why{Name: name, Value: float64(value), Measure: Diameter,
		Says: "what the outermost layer stands on, twice its thickest component, and its binder; all wires of a reel share its error",
		In: []Input{known("it stands on", float64(stand[k]), Diameter, from),
			known("thickest component", float64(thick[k]), Diameter, from), bind},
		make: func(in []float64) float64 { return in[0] + 2*in[1] + in[2] }}, true
}

func (e Explainer) branchLaid(f Figure) (Why, bool) {
	i, mb, b, ok := e.branchAt(f.Of)
	if !ok || len(b.Layers) == 0 {
		return Why{}, false
	}
	w := Why{Name: "laid length of " + f.Of, Value: float64(b.LaidMM), Measure: Length,
		Says: "the branch without the sorted zone at each breakout and one diameter before it",
		In:   []Input{given("length of "+f.Of, float64(mb.LengthMM), Length), e.from("over", Figure{What: "branch.over", Of: f.Of})}}
	for _, z := range bundle.Zones(e.Sheet, i) {
		w.In = append(w.In, shop("zone", float64(z), Length, false))
	}
	w.make = func(in []float64) float64 {
		t := in[0]
		for _, z := range in[2:] {
			t -= math.Max(z, 0) + in[1]
		}
		return math.Max(t, 0)
	}
	return w, true
}

func (e Explainer) branchBend(f Figure) (Why, bool) {
	_, _, b, ok := e.branchAt(f.Of)
	if !ok || b.Bend.MinMM <= 0 {
		return Why{}, false
	}
	id, k, d := "", 0, unit.Millimetre(0)
	for n := range b.Layers {
		for _, m := range b.Layers[n].Members {
			if m.D > d {
				id, k, d = m.ID, n, m.D
			}
		}
	}
	practice := catalogue.Origin{Source: "rule, common practice", Standing: catalogue.Practice}
	comp := e.component("thickest component, "+id, Figure{Of: f.Of, K: k}, id)
	return Why{Name: "least inside bend of " + f.Of, Value: float64(b.Bend.MinMM), Measure: Length,
		Says: "ten times the thickest component or six times over, whichever is more",
		In: []Input{comp, known("times that", 10, Times, practice), e.from("over", Figure{What: "branch.over", Of: f.Of}),
			known("times over", 6, Times, practice)},
		make: func(in []float64) float64 { return math.Max(in[0]*in[1], in[2]*in[3]) }}, true
}

func (e Explainer) branchRoom(f Figure) (Why, bool) {
	_, _, b, ok := e.branchAt(f.Of)
	if !ok || len(b.Layers) < 2 {
		return Why{}, false
	}
	w := Why{Name: "room in " + f.Of, Measure: Count, Says: "the room of its layers", make: sum}
	for k := range b.Layers {
		w.Value += float64(b.Layers[k].Room)
		if k > 0 {
			w.In = append(w.In, e.from(model.LayerName(k), Figure{What: "layer.room", Of: f.Of, K: k}))
		}
	}
	return w, true
}
