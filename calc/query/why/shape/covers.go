package shape

import (
	"fmt"
	"math"

	"contralay/calc/formula/cover"
	"contralay/calc/formula/plan"
	overphase "contralay/calc/phase/over"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How the figures of a sheath and its boots are made.

// tubeAt is one of the tubes judged for a branch.
func tubeAt(e why.Explainer, f why.Figure) (sheet.Choice, bool) {
	_, _, b, ok := e.BranchAt(f.Of)
	if !ok {
		return sheet.Choice{}, false
	}
	for _, c := range b.Sheath.Others {
		if c.Tube.ID == f.Part {
			return c, true
		}
	}
	return sheet.Choice{}, false
}

func sheathPass(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, _, b, ok := e.BranchAt(f.Of)
	if !ok || len(b.Sheath.Others) == 0 {
		return why.Why{}, false
	}
	p := b.Sheath.Pass
	v, over, name := p.NominalMM, "branch.over", "what the sheath of "+f.Of+" must pass"
	base := b.OverMM + p.AddMM
	if f.What == "sheath.passmost" {
		v, over, name, base = max(p.MaxMM, b.OverMaxMM, p.NominalMM), "branch.most", name+" with every wire at its largest",
			b.OverMaxMM+p.AddMM
	}
	w := why.Why{Name: name, Value: float64(max(v, base)), Measure: why.Diameter}
	beneath := with(e, e.From("OD of the bundle", why.Figure{What: over, Of: f.Of}), p.AddMM)
	switch extra := v - base; {
	case p.Lumped:
		w.Says = "It goes on over a breakout, where the sorted zone is thicker: " + b.Sheath.PassAt
		w.In = []why.Input{beneath, why.Shop("factor for the thicker zone", float64(e.Limits.ZoneLump), why.Times, e.H.Rules.ZoneLump.Set)}
		w.Formula = func(in []float64) float64 { return in[0] * in[1] }
	case extra > 0:
		w.Says = "It must pass the bundle and what sticks out of it: " + b.Sheath.PassAt
		w.In = []why.Input{beneath, why.LookUp("sticks out by", float64(extra), why.Diameter,
			catalogue.Origin{Source: "catalogue of splices and wires", Standing: catalogue.Memory})}
		w.Formula = why.Sum
	default:
		w.Says, w.In, w.Formula = b.Sheath.PassAt, []why.Input{beneath}, why.First
	}
	return w, true
}

// lies is a diameter of the bundle that a sheath lies on, with the covers beneath it
// where there are any.
func lies(e why.Explainer, name, what, branch string) why.Input {
	in := e.From(name, why.Figure{What: what, Of: branch})
	b := &e.Branches[e.Index.Branch[branch]]
	extra := b.Sheath.BeneathMM
	if what == "branch.tape" {
		extra = b.Sheath.BeneathMinMM
	}
	return with(e, in, extra)
}

// with is a diameter of the bundle with the covers that add to it.
func with(e why.Explainer, in why.Input, extra unit.Millimetre) why.Input {
	if extra == 0 {
		return in
	}
	return why.LookUp(in.Name+" with the covers beneath the sheath", in.Value+float64(extra), why.Diameter,
		catalogue.Origin{Source: "the bundle, and its covers beneath the sheath", Standing: catalogue.Memory})
}

func sheathEnd(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, mb, b, ok := e.BranchAt(f.Of)
	if !ok || b.Sheath.ToMM <= 0 {
		return why.Why{}, false
	}
	start := f.What == "sheath.from"
	v, place, word := b.Sheath.ToMM, mb.To, "stop"
	if start {
		v, place, word = b.Sheath.FromMM, mb.From, "start"
	}
	does := " stops"
	if start {
		does = " starts"
	}
	w := why.Why{Name: "where the sheath of " + f.Of + does, Value: float64(v),
		Measure: why.Length}
	for _, c := range mb.Covers {
		set := c.ToMM
		if start {
			set = c.FromMM
		}
		if c.What == model.CoverSheath && set.Set {
			w.Says, w.In = "It is set in the file", []why.Input{why.Given(word, float64(v), why.Length)}
			w.Formula = why.First
			return w, true
		}
	}
	from, to := overphase.SheathEnds(e.Sheet, i)
	if start && from != v || !start && to != v {
		return why.Why{}, false
	}
	w.In = []why.Input{why.Given("length of "+f.Of, float64(mb.LengthMM), why.Length)}
	if k, ok := e.Index.Termination[place]; ok {
		boot, has := e.Cat.Boot(e.H.Terminations[k].Boot.V)
		if !has {
			w.Says = "There is no boot, so this end lies at the datum"
			w.In = append(w.In, why.Exact("distance from the datum", 0, why.Length))
		} else {
			w.Says = "This end lies under the boot, with the overlap. The boot counts a tenth shorter, because a moulded part may be"
			w.In = append(w.In, why.LookUp("length of "+boot.ID, float64(boot.LengthMM), why.Length, boot.From(boot.Read.Length)),
				why.Shop("share of its length, at worst", overphase.ShortestPart, why.Times, false),
				why.Shop("overlap", float64(cover.OverlapMM), why.Length, false))
		}
	} else {
		w.Says = "This end lies at the sorted zone, or inside the transition with the overlap"
		inset := v
		if !start {
			inset = mb.LengthMM - v
		}
		w.In = append(w.In, why.Shop("zone", float64(inset), why.Length, e.H.Rules.ZoneMM.Set))
	}
	w.Formula = func(in []float64) float64 {
		inset := in[1]
		if len(in) == 4 {
			inset = math.Max(0, in[1]*in[2]-in[3])
		}
		if inset = math.Min(inset, in[0]); start {
			return inset
		}
		return in[0] - inset
	}
	return w, true
}

func tubeSlide(e why.Explainer, f why.Figure) (why.Why, bool) {
	c, ok := tubeAt(e, f)
	if !ok {
		return why.Why{}, false
	}
	v, pass, name := c.Verdict.SlideMM, "sheath.pass", "fit of "+f.Part+": clearance"
	if f.What == "tube.worst" {
		v, pass, name = c.Verdict.WorstSlideMM, "sheath.passmost", name+" with every wire at its largest"
	}
	return why.Why{Name: name, Value: float64(v), Measure: why.Diameter, Says: "Take the supplied bore less what it must pass",
		In: []why.Input{why.LookUp("supplied bore", float64(c.Tube.SuppliedMM), why.Diameter, c.Tube.Origin),
			e.From("it must pass", why.Figure{What: pass, Of: f.Of})},
		Formula: func(in []float64) float64 { return in[0] - in[1] }}, true
}

func tubeRoom(e why.Explainer, f why.Figure) (why.Why, bool) {
	c, ok := tubeAt(e, f)
	if !ok {
		return why.Why{}, false
	}
	return why.Why{Name: "fit of " + f.Part + ": clearance wanted", Value: float64(c.Verdict.RoomMM), Measure: why.Diameter,
		Says: "Common practice wants 0.3 mm up to 100 mm of cover, 1.2 mm at 500 mm, 2.0 mm at 1000 mm, in proportion between them, and " +
			"0.16 mm more for each 100 mm after that",
		In: []why.Input{e.From("start", why.Figure{What: "sheath.from", Of: f.Of}),
			e.From("stop", why.Figure{What: "sheath.to", Of: f.Of})},
		Formula: func(in []float64) float64 {
			switch l := in[1] - in[0]; {
			case l <= 100:
				return 0.3
			case l <= 500:
				return 0.3 + (l-100)/400*0.9
			default:
				return 1.2 + (l-500)/500*0.8
			}
		}}, true
}

func tubeGrip(e why.Explainer, f why.Figure) (why.Why, bool) {
	c, ok := tubeAt(e, f)
	if !ok {
		return why.Why{}, false
	}
	return why.Why{Name: "fit of " + f.Part + ": grip ratio", Value: float64(c.Verdict.GripRatio), Measure: why.Times,
		Says: "Divide the tape diameter of the bundle by the recovered bore; 1.10 is wanted",
		In: []why.Input{lies(e, "tape diameter", "branch.tape", f.Of),
			why.LookUp("recovered bore", float64(c.Tube.RecoveredMM), why.Diameter, c.Tube.Origin)},
		Formula: func(in []float64) float64 { return in[0] / in[1] }}, true
}

func tubeFull(e why.Explainer, f why.Figure) (why.Why, bool) {
	c, ok := tubeAt(e, f)
	if !ok {
		return why.Why{}, false
	}
	return why.Why{Name: "fit of " + f.Part + ": share of its bore that is filled", Value: float64(c.Verdict.StretchRatio),
		Measure: why.Percent,
		Says:    "Divide the OD of the bundle by the supplied bore; 80 % at most is advised",
		In: []why.Input{lies(e, "OD", "branch.over", f.Of), why.LookUp("supplied bore", float64(c.Tube.SuppliedMM), why.Diameter,
			c.Tube.Origin)},
		Formula: func(in []float64) float64 { return in[0] / in[1] }}, true
}

func wallOf(t catalogue.Tube) why.Input {
	st := t.WallStanding
	if st == "" {
		st = t.Standing
	}
	return why.LookUp("recovered wall", float64(t.WallMM), why.Diameter, catalogue.Origin{Source: t.Source, Standing: st})
}

func tubeOver(e why.Explainer, f why.Figure) (why.Why, bool) {
	c, ok := tubeAt(e, f)
	if !ok || !c.Verdict.Wraps {
		return why.Why{}, false
	}
	return why.Why{Name: "OD of " + f.Part + ", shrunk on " + f.Of, Value: float64(c.Verdict.OverMM), Measure: why.Diameter,
		Says: "The wall keeps its cross-section. Take the root of OD squared plus 4 w (R + w); w is the wall and R the bore, both after " +
			"free recovery",
		In: []why.Input{lies(e, "OD", "branch.over", f.Of),
			why.LookUp("recovered bore", float64(c.Tube.RecoveredMM), why.Diameter, c.Tube.Origin),
			wallOf(c.Tube)},
		Formula: func(in []float64) float64 { return math.Sqrt(in[0]*in[0] + 4*in[2]*(in[1]+in[2])) }}, true
}

func tubeWall(e why.Explainer, f why.Figure) (why.Why, bool) {
	c, ok := tubeAt(e, f)
	if !ok || !c.Verdict.Wraps {
		return why.Why{}, false
	}
	return why.Why{Name: "wall of " + f.Part + " on " + f.Of, Value: float64(c.Verdict.WallMM), Measure: why.Diameter,
		Says: "It is half of what the sheath adds to the OD",
		In: []why.Input{e.From("OD over the sheath", why.Figure{What: "tube.over", Of: f.Of, Part: f.Part}),
			lies(e, "OD", "branch.over", f.Of)},
		Formula: func(in []float64) float64 { return (in[0] - in[1]) / 2 }}, true
}

func tubeCut(e why.Explainer, f why.Figure) (why.Why, bool) {
	c, ok := tubeAt(e, f)
	if !ok || c.CutMM <= 0 {
		return why.Why{}, false
	}
	st := c.Tube.LengthStanding
	if st == "" {
		st = c.Tube.Standing
	}
	return why.Why{Name: "cut length of " + f.Part + " for " + f.Of, Value: float64(c.CutMM), Measure: why.Length,
		Says: "Divide the covered length by 1 less the share by which it may shorten. Round up to the next step",
		In: []why.Input{e.From("start", why.Figure{What: "sheath.from", Of: f.Of}), e.From("stop", why.Figure{What: "sheath.to", Of: f.Of}),
			why.LookUp("it may shorten by", float64(c.Tube.LengthChange), why.Percent,
				catalogue.Origin{Source: c.Tube.Source, Standing: st}),
			why.Shop("step", float64(e.Limits.CutStepMM), why.Length, e.H.Rules.CutStepMM.Set)},
		Formula: func(in []float64) float64 { return upTo((in[1]-in[0])/(1-in[2]), in[3]) }}, true
}

func tubeMass(e why.Explainer, f why.Figure) (why.Why, bool) {
	c, ok := tubeAt(e, f)
	if !ok || c.Gram <= 0 {
		return why.Why{}, false
	}
	return why.Why{Name: "mass of " + f.Part + " on " + f.Of, Value: float64(c.Gram), Measure: why.Mass,
		Says: "Its mass per metre is pi w (R + w) times the density, with w the wall and R the bore. Multiply it by the cut length",
		In: []why.Input{wallOf(c.Tube), why.LookUp("recovered bore", float64(c.Tube.RecoveredMM), why.Diameter, c.Tube.Origin),
			why.LookUp("density, g/cm3", float64(c.Tube.Density), why.Times, c.Tube.Origin),
			e.From("cut length", why.Figure{What: "tube.cut", Of: f.Of, Part: f.Part})},
		Formula: func(in []float64) float64 { return math.Pi * in[0] * (in[1] + in[0]) * in[2] * in[3] / 1000 }}, true
}

func bootCable(e why.Explainer, f why.Figure) (why.Why, bool) {
	k, ok := e.Index.Termination[f.Of]
	if !ok {
		return why.Why{}, false
	}
	boot, has := e.Cat.Boot(e.H.Terminations[k].Boot.V)
	if !has {
		return why.Why{}, false
	}
	bore, share, word, read := boot.CableRecoveredMM, float64(cover.MinGrip), "thinnest", boot.Read.CableRecovered
	if f.What == "boot.most" {
		bore, share, word, read = boot.CableSuppliedMM, float64(cover.MaxStretch), "thickest", boot.Read.CableSupplied
	}
	return why.Why{Name: fmt.Sprintf("%s cable that %s fits", word, boot.ID), Value: float64(bore) * share, Measure: why.Diameter,
		Says:    "The thinnest cable is a tenth over the recovered bore, the thickest is four fifths of the supplied bore",
		In:      []why.Input{why.LookUp("bore", float64(bore), why.Diameter, boot.From(read)), why.Shop("share", share, why.Times, false)},
		Formula: func(in []float64) float64 { return in[0] * in[1] }}, true
}

// bootUnder explains what the cable end of a boot lies on: with every wire of its branch, Figure.Part, at its smallest or largest.
func bootUnder(e why.Explainer, f why.Figure) (why.Why, bool) {
	k, ok := e.Index.Termination[f.Of]
	if !ok {
		return why.Why{}, false
	}
	i, mb, b, ok := e.BranchAt(f.Part)
	boot, has := e.Cat.Boot(e.H.Terminations[k].Boot.V)
	if !ok || !has || mb.From != f.Of && mb.To != f.Of || b.OverMM <= 0 {
		return why.Why{}, false
	}
	least, most := overphase.UnderBootAtEdges(e.Sheet, i, f.Of, boot)
	v, word, edge, base := least, "smallest", "branch.least", b.OverMinMM
	if f.What == "boot.fills" {
		v, word, edge, base = most, "largest", "branch.most", b.OverMaxMM
	}
	return why.Why{Name: fmt.Sprintf("%s lies on, with every wire at its %s", boot.ID, word), Value: float64(v), Measure: why.Diameter,
		Says: "Take the OD of the bundle with every wire at its " + word + ". Add what the covers beneath the boot add",
		In: []why.Input{e.From("OD at its "+word, why.Figure{What: edge, Of: f.Part}), why.LookUp("covers beneath add", float64(v-base),
			why.Diameter, catalogue.Origin{Source: "the covers beneath", Standing: catalogue.Memory})},
		Formula: why.Sum}, true
}

// PlanOver explains the diameter of a lay-up that is only planned and stands in no
// sheet; st is the standing of its wires.
func PlanOver(p plan.Plan, name string, st catalogue.Standing) (why.Why, bool) {
	w, ok := planOver(p, name, st)
	if !ok {
		return why.Why{}, false
	}
	w.Standing = catalogue.House
	for _, in := range w.In {
		w.Standing = catalogue.Weakest(w.Standing, in.Standing)
	}
	return w, true
}

func planOver(p plan.Plan, name string, st catalogue.Standing) (why.Why, bool) {
	if len(p.Layers) == 0 {
		return why.Why{}, false
	}
	from := catalogue.Origin{Source: "the planner, with thick next to thin", Standing: st}
	l := p.Layers[len(p.Layers)-1]
	if len(p.Layers) == 1 {
		return why.Why{Name: name, Value: float64(p.Over), Measure: why.Diameter, Says: "The pieces lie as close together as they can",
			In: []why.Input{why.LookUp("OD of the group", float64(l.Over), why.Diameter, from)}, Formula: why.First}, true
	}
	below := p.Layers[len(p.Layers)-2]
	thick := l.FillerMM
	for k, d := range l.Sizes {
		if l.N[k] > 0 {
			thick = max(thick, d)
		}
	}
	return why.Why{Name: name, Value: float64(p.Over), Measure: why.Diameter,
		Says: "Take the larger of two: the inside diameter of the outermost layer, " +
			"and the OD of the layer below. Add its thickest piece twice",
		In: []why.Input{why.LookUp("tape diameter below", float64(below.Tape), why.Diameter, from),
			why.LookUp("it stands proud by", float64(l.Proud), why.Diameter, from),
			why.LookUp("OD of the layer below", float64(below.Over), why.Diameter, from),
			why.LookUp("thickest piece", float64(thick), why.Diameter, from)},
		Formula: func(in []float64) float64 { return math.Max(in[0]+2*in[1], in[2]) + 2*in[3] }}, true
}
