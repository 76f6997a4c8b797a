package why

import (
	"fmt"
	"math"

	"contralay/calc/formula/cover"
	"contralay/calc/formula/plan"
	overphase "contralay/calc/phase/over"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How the figures of a sheath and its boots are made.

// tubeAt is one of the tubes judged for a branch.
func (e Explainer) tubeAt(f Figure) (*sheet.Branch, sheet.Choice, bool) {
	_, _, b, ok := e.branchAt(f.Of)
	if !ok {
		return nil, sheet.Choice{}, false
	}
	for _, c := range b.Sheath.Others {
		if c.Tube.ID == f.Part {
			return b, c, true
		}
	}
	return nil, sheet.Choice{}, false
}

func (e Explainer) sheathPass(f Figure) (Why, bool) {
	_, _, b, ok := e.branchAt(f.Of)
	if !ok || len(b.Sheath.Others) == 0 {
		return Why{}, false
	}
	p := b.Sheath.Pass
	v, over, name := p.NominalMM, "branch.over", "what the sheath of "+f.Of+" must pass"
	base := b.OverMM + p.AddMM
	if f.What == "sheath.passmost" {
		v, over, name, base = max(p.MaxMM, b.OverMaxMM, p.NominalMM), "branch.most", name+" at its largest", b.OverMaxMM+p.AddMM
	}
	w := Why{Name: name, Value: float64(max(v, base)), Measure: Diameter}
	bundle := e.with(e.from("over of the bundle", Figure{What: over, Of: f.Of}), p.AddMM)
	switch extra := v - base; {
	case p.Lumped:
		w.Says = "it comes on over a breakout, where the sorted zone stands thicker: " + b.Sheath.PassAt
		w.In = []Input{bundle, shop("zone stands thicker by", float64(e.Limits.ZoneLump), Times, e.H.Rules.ZoneLump.Set)}
		w.make = func(in []float64) float64 { return in[0] * in[1] }
	case extra > 0:
		w.Says = "the bundle, and what stands out of it: " + b.Sheath.PassAt
		w.In = []Input{bundle, known("stands out by", float64(extra), Diameter,
			catalogue.Origin{Source: "catalogue of splices and wires", Standing: catalogue.Memory})}
		w.make = sum
	default:
		w.Says, w.In, w.make = b.Sheath.PassAt, []Input{bundle}, first0
	}
	return w, true
}

// lies is a diameter of the bundle that a sheath lies on, with the covers beneath it
// where there are any.
func (e Explainer) lies(name, what, of string) Input {
	in := e.from(name, Figure{What: what, Of: of})
	b := &e.Branches[e.X.Branch[of]]
	extra := b.Sheath.BeneathMM
	if what == "branch.tape" {
		extra = b.Sheath.BeneathMinMM
	}
	return e.with(in, extra)
}

// with is a diameter of the bundle with the covers that add to it.
func (e Explainer) with(in Input, extra unit.Millimetre) Input {
	if extra == 0 {
		return in
	}
	return known(in.Name+" with what lies beneath the sheath", in.Value+float64(extra), Diameter,
		catalogue.Origin{Source: "the bundle, and its covers beneath the sheath", Standing: catalogue.Memory})
}

func (e Explainer) sheathEnd(f Figure) (Why, bool) {
	i, mb, b, ok := e.branchAt(f.Of)
	if !ok || b.Sheath.ToMM <= 0 {
		return Why{}, false
	}
	start := f.What == "sheath.from"
	v, place, word := b.Sheath.ToMM, mb.To, "stop"
	if start {
		v, place, word = b.Sheath.FromMM, mb.From, "start"
	}
	w := Why{Name: "where the sheath of " + f.Of + map[bool]string{true: " starts", false: " stops"}[start], Value: float64(v),
		Measure: Length}
	for _, c := range mb.Covers {
		set := c.ToMM
		if start {
			set = c.FromMM
		}
		if c.What == model.CoverSheath && set.Set {
			w.Says, w.In = "as it is set", []Input{given(word, float64(v), Length)}
			w.make = first0
			return w, true
		}
	}
	from, to := overphase.SheathEnds(e.Sheet, i)
	if start && from != v || !start && to != v {
		return Why{}, false
	}
	w.In = []Input{given("length of "+f.Of, float64(mb.LengthMM), Length)}
	if k, ok := e.X.Termination[place]; ok {
		boot, has := e.Cat.Boot(e.H.Terminations[k].Boot.V)
		if !has {
			w.Says = "without a boot it starts at the datum"
			w.In = append(w.In, exact("inset", 0, Length))
		} else {
			w.Says = "under the shortest boot, with the overlap: a moulded part is a tenth shorter at worst"
			w.In = append(w.In, known("length of "+boot.ID, float64(boot.LengthMM), Length, boot.From(boot.Read.Length)),
				shop("at worst", overphase.ShortestPart, Times, false), shop("overlap", float64(cover.OverlapMM), Length, false))
		}
	} else {
		w.Says = "it stops at the sorted zone, or inside the transition with the overlap"
		inset := v
		if !start {
			inset = mb.LengthMM - v
		}
		w.In = append(w.In, shop("zone", float64(inset), Length, e.H.Rules.ZoneMM.Set))
	}
	w.make = func(in []float64) float64 {
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

func (e Explainer) tubeSlide(f Figure) (Why, bool) {
	_, c, ok := e.tubeAt(f)
	if !ok {
		return Why{}, false
	}
	v, pass, name := c.Verdict.SlideMM, "sheath.pass", "what "+f.Part+" has to slide"
	if f.What == "tube.worst" {
		v, pass, name = c.Verdict.WorstSlideMM, "sheath.passmost", name+" with every wire at its largest"
	}
	return Why{Name: name, Value: float64(v), Measure: Diameter, Says: "the bore as supplied less what it must pass",
		In: []Input{known("bore as supplied", float64(c.Tube.SuppliedMM), Diameter, c.Tube.Origin),
			e.from("it must pass", Figure{What: pass, Of: f.Of})},
		make: func(in []float64) float64 { return in[0] - in[1] }}, true
}

func (e Explainer) tubeRoom(f Figure) (Why, bool) {
	b, c, ok := e.tubeAt(f)
	if !ok {
		return Why{}, false
	}
	_ = b
	return Why{Name: "what " + f.Part + " should have to slide", Value: float64(c.Verdict.RoomMM), Measure: Diameter,
		Says: "0.3 mm up to 100 mm of cover, 1.2 at 500, 2.0 at 1000, linear between, 0.16 more for each 100 after: common practice",
		In:   []Input{e.from("start", Figure{What: "sheath.from", Of: f.Of}), e.from("stop", Figure{What: "sheath.to", Of: f.Of})},
		make: func(in []float64) float64 {
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

func (e Explainer) tubeGrip(f Figure) (Why, bool) {
	_, c, ok := e.tubeAt(f)
	if !ok {
		return Why{}, false
	}
	return Why{Name: "how " + f.Part + " grips", Value: float64(c.Verdict.GripRatio), Measure: Times,
		Says: "tape diameter of the bundle divided by the bore it recovers to; 1.10 is wanted",
		In: []Input{e.lies("tape diameter", "branch.tape", f.Of),
			known("bore recovered", float64(c.Tube.RecoveredMM), Diameter, c.Tube.Origin)},
		make: func(in []float64) float64 { return in[0] / in[1] }}, true
}

func (e Explainer) tubeFull(f Figure) (Why, bool) {
	_, c, ok := e.tubeAt(f)
	if !ok {
		return Why{}, false
	}
	return Why{Name: "how full " + f.Part + " is", Value: float64(c.Verdict.StretchRatio), Measure: Percent,
		Says: "over of the bundle divided by the bore as supplied; 80 % at most is advised",
		In:   []Input{e.lies("over", "branch.over", f.Of), known("bore as supplied", float64(c.Tube.SuppliedMM), Diameter, c.Tube.Origin)},
		make: func(in []float64) float64 { return in[0] / in[1] }}, true
}

func wallOf(t catalogue.Tube) Input {
	st := t.WallStanding
	if st == "" {
		st = t.Standing
	}
	return known("wall recovered", float64(t.WallMM), Diameter, catalogue.Origin{Source: t.Source, Standing: st})
}

func (e Explainer) tubeOver(f Figure) (Why, bool) {
	_, c, ok := e.tubeAt(f)
	if !ok || !c.Verdict.Wraps {
		return Why{}, false
	}
	return Why{Name: "over " + f.Part + ", shrunk on " + f.Of, Value: float64(c.Verdict.OverMM), Measure: Diameter,
		Says: "the wall keeps its cross-section: the root of over squared and 4 w (R + w), w the wall and R the bore, both when it has " +
			"recovered freely",
		In: []Input{e.lies("over", "branch.over", f.Of), known("bore recovered", float64(c.Tube.RecoveredMM), Diameter, c.Tube.Origin),
			wallOf(c.Tube)},
		make: func(in []float64) float64 { return math.Sqrt(in[0]*in[0] + 4*in[2]*(in[1]+in[2])) }}, true
}

func (e Explainer) tubeWall(f Figure) (Why, bool) {
	_, c, ok := e.tubeAt(f)
	if !ok || !c.Verdict.Wraps {
		return Why{}, false
	}
	return Why{Name: "wall of " + f.Part + " on " + f.Of, Value: float64(c.Verdict.WallMM), Measure: Diameter, Says: "half of what it adds",
		In:   []Input{e.from("over the sheath", Figure{What: "tube.over", Of: f.Of, Part: f.Part}), e.lies("over", "branch.over", f.Of)},
		make: func(in []float64) float64 { return (in[0] - in[1]) / 2 }}, true
}

func (e Explainer) tubeCut(f Figure) (Why, bool) {
	_, c, ok := e.tubeAt(f)
	if !ok || c.CutMM <= 0 {
		return Why{}, false
	}
	st := c.Tube.LengthStanding
	if st == "" {
		st = c.Tube.Standing
	}
	return Why{Name: "cut of " + f.Part + " for " + f.Of, Value: float64(c.CutMM), Measure: Length,
		Says: "the covered length divided by 1 less the share it may shorten, up to the next step",
		In: []Input{e.from("start", Figure{What: "sheath.from", Of: f.Of}), e.from("stop", Figure{What: "sheath.to", Of: f.Of}),
			known("it shortens by at most", float64(c.Tube.LengthChange), Percent, catalogue.Origin{Source: c.Tube.Source, Standing: st}),
			shop("step", float64(e.Limits.CutStepMM), Length, e.H.Rules.CutStepMM.Set)},
		make: func(in []float64) float64 { return upTo((in[1]-in[0])/(1-in[2]), in[3]) }}, true
}

func (e Explainer) tubeMass(f Figure) (Why, bool) {
	_, c, ok := e.tubeAt(f)
	if !ok || c.Gram <= 0 {
		return Why{}, false
	}
	return Why{Name: "mass of " + f.Part + " on " + f.Of, Value: float64(c.Gram), Measure: Mass,
		Says: "pi w (R + w) times density is its mass per metre; times the cut",
		In: []Input{wallOf(c.Tube), known("bore recovered", float64(c.Tube.RecoveredMM), Diameter, c.Tube.Origin),
			known("density, g/cm3", float64(c.Tube.Density), Times, c.Tube.Origin),
			e.from("cut", Figure{What: "tube.cut", Of: f.Of, Part: f.Part})},
		make: func(in []float64) float64 { return math.Pi * in[0] * (in[1] + in[0]) * in[2] * in[3] / 1000 }}, true
}

func (e Explainer) bootCable(f Figure) (Why, bool) {
	k, ok := e.X.Termination[f.Of]
	if !ok {
		return Why{}, false
	}
	boot, has := e.Cat.Boot(e.H.Terminations[k].Boot.V)
	if !has {
		return Why{}, false
	}
	bore, share, word, read := boot.CableRecoveredMM, float64(cover.MinGrip), "thinnest", boot.Read.CableRecovered
	if f.What == "boot.most" {
		bore, share, word, read = boot.CableSuppliedMM, float64(cover.MaxStretch), "thickest", boot.Read.CableSupplied
	}
	return Why{Name: fmt.Sprintf("%s cable that %s takes", word, boot.ID), Value: float64(bore) * share, Measure: Diameter,
		Says: "a tenth over the bore it recovers to, four fifths of the bore as supplied",
		In:   []Input{known("bore", float64(bore), Diameter, boot.From(read)), shop("share", share, Times, false)},
		make: func(in []float64) float64 { return in[0] * in[1] }}, true
}

// PlanOver explains the diameter of a lay-up that is only planned and stands in no
// sheet; st is the standing of its wires.
func PlanOver(p plan.Plan, name string, st catalogue.Standing) (Why, bool) {
	w, ok := planOver(p, name, st)
	if !ok {
		return Why{}, false
	}
	w.Standing = catalogue.House
	for _, in := range w.In {
		w.Standing = catalogue.Weakest(w.Standing, in.Standing)
	}
	return w, true
}

func planOver(p plan.Plan, name string, st catalogue.Standing) (Why, bool) {
	if len(p.Layers) == 0 {
		return Why{}, false
	}
	from := catalogue.Origin{Source: "the planner, thick beside thin", Standing: st}
	l := p.Layers[len(p.Layers)-1]
	if len(p.Layers) == 1 {
		return Why{Name: name, Value: float64(p.Over), Measure: Diameter, Says: "the group packed as close as it goes",
			In: []Input{known("group", float64(l.Over), Diameter, from)}, make: first0}, true
	}
	below := p.Layers[len(p.Layers)-2]
	thick := l.FillerMM
	for k, d := range l.Sizes {
		if l.N[k] > 0 {
			thick = max(thick, d)
		}
	}
	return Why{Name: name, Value: float64(p.Over), Measure: Diameter,
		Says: "what its outermost layer stands on or the crown below, whichever is thicker, and its thickest component on both sides",
		In: []Input{known("tape diameter below", float64(below.Tape), Diameter, from),
			known("it stands proud by", float64(l.Proud), Diameter, from), known("crown below", float64(below.Over), Diameter, from),
			known("thickest component", float64(thick), Diameter, from)},
		make: func(in []float64) float64 { return math.Max(in[0]+2*in[1], in[2]) + 2*in[3] }}, true
}
