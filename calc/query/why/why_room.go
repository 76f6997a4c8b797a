package why

import (
	"fmt"
	"math"
	"slices"

	"contralay/calc/formula/loop"
	overphase "contralay/calc/phase/over"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How the figures of loops, of covers beside the sheath, and the floor of a bundle are made.

func (e Explainer) branchFloor(f Figure) (Why, bool) {
	i, _, b, ok := e.branchAt(f.Of)
	if !ok || len(b.Layers) == 0 {
		return Why{}, false
	}
	n := map[unit.Millimetre]int{}
	var sizes []unit.Millimetre
	for _, l := range b.Layers {
		for _, m := range l.Members {
			if n[m.D]++; n[m.D] == 1 {
				sizes = append(sizes, m.D)
			}
		}
	}
	slices.Sort(sizes)
	w := Why{Name: "floor of " + f.Of, Value: float64(overphase.FloorMM(e.Sheet, i)), Measure: Diameter,
		Says: "the circle that the areas of its components come to, the root of the sum of their squares: no lay-up of round things " +
			"reaches it",
		make: func(in []float64) float64 {
			sum := 0.0
			for k := 0; k+1 < len(in); k += 2 {
				sum += in[k] * in[k+1] * in[k+1]
			}
			return math.Sqrt(sum)
		}}
	for _, d := range sizes {
		w.In = append(w.In, exact(fmt.Sprintf("how many of %s mm", unit.Fixed(d, 2)), float64(n[d]), Times),
			known("their diameter", float64(d), Diameter, catalogue.Origin{Source: "over of the components", Standing: b.Standing}))
	}
	return w, true
}

func (e Explainer) loopOf(f Figure) (Why, bool) {
	t, ok := e.X.Termination[f.Of]
	if !ok {
		return Why{}, false
	}
	l := overphase.LoopRoomOf(e.Sheet, t)
	term := &e.H.Terminations[t]
	own := given("loop", float64(l.LoopMM), Length)
	if !term.LoopMM.Set {
		own = shop("loop", float64(l.LoopMM), Length, e.H.Rules.LoopMM.Set)
	}
	if f.What == "loop.length" {
		return Why{Name: "loop of " + f.Of, Value: float64(l.LoopMM), Measure: Length, Says: "as it is given", In: []Input{own},
			make: first0}, true
	}
	if !l.Known {
		return Why{}, false
	}
	boot, _ := e.Cat.Boot(term.Boot.V)
	over := unit.Millimetre(0)
	for _, b := range e.X.Meeting(f.Of) {
		over = max(over, e.Branches[b].OverMM)
	}
	bundle := known("over of the bundle", float64(over), Diameter, catalogue.Origin{Source: "its branch", Standing: catalogue.Memory})
	lip := known("lip of "+boot.ID+" as supplied", float64(boot.LipSuppliedMM), Diameter, boot.From(boot.Read.LipSupplied))
	long := known("length of "+boot.ID, float64(boot.LengthMM), Length, boot.From(boot.Read.Length))
	room := func(in []float64) float64 { return math.Max(0, (in[0]-in[1])/2) }
	switch f.What {
	case "loop.room":
		return Why{Name: "room for the loop of " + f.Of, Value: float64(l.RoomMM), Measure: Diameter,
			Says: "what the boot leaves beside the bundle, on each side", In: []Input{lip, bundle}, make: room}, true
	case "loop.bow":
		return Why{Name: "how far the loop of " + f.Of + " bows", Value: float64(l.BowMM), Measure: Diameter,
			Says: "laid in so many bows that leave and meet the bundle along it, as long together as the loop: derived",
			In:   []Input{own, long, exact("bows", float64(l.Bows), Times)},
			make: func(in []float64) float64 {
				off, _ := loop.Bow(unit.Millimetre(in[0]), unit.Millimetre(in[1]), int(in[2]))
				return float64(off)
			}}, true
	case "loop.longest":
		thick := known("thickest wire", float64(overphase.ThickestAt(e.Sheet, f.Of)), Diameter,
			catalogue.Origin{Source: "its wires", Standing: catalogue.Memory})
		return Why{Name: "the longest loop for " + f.Of, Value: float64(l.LongestMM), Measure: Length,
			Says: "the longest that lies in the room beside the bundle with no wire bent below three times its thickness",
			In:   []Input{lip, bundle, long, thick},
			make: func(in []float64) float64 {
				return float64(loop.Longest(unit.Millimetre(in[2]), unit.Millimetre(room(in)), overphase.Supported*unit.Millimetre(in[3])))
			}}, true
	}
	return Why{Name: "what the bend of " + boot.ID + " takes", Value: float64(l.TurnMM), Measure: Length,
		Says: "the angle times half the diameter: so much more way have the wires on the outer side",
		In:   []Input{bundle, exact("angle, degrees", float64(overphase.BootTurns[boot.Shape]), Times)},
		make: func(in []float64) float64 { return in[0] / 2 * in[1] * math.Pi / 180 }}, true
}

// coverOver explains a cover beside the sheath: Figure.K is its place in the branch's list.
func (e Explainer) coverOver(f Figure) (Why, bool) {
	_, mb, b, ok := e.branchAt(f.Of)
	if !ok {
		return Why{}, false
	}
	for _, c := range b.Covers {
		if c.At != f.K {
			continue
		}
		beneath := catalogue.Origin{Source: "the bundle, and the covers beneath", Standing: catalogue.Memory}
		under := known("over what it lies on", float64(c.UnderMM), Diameter, beneath)
		name := string(c.What) + " of " + f.Of
		switch {
		case f.What == "cover.slide" && c.Known:
			return Why{Name: "what the " + name + " has to slide", Value: float64(c.Verdict.SlideMM), Measure: Diameter,
				Says: "the bore as supplied less what it must pass",
				In: []Input{known("bore as supplied", float64(c.Tube.SuppliedMM), Diameter, c.Tube.Origin),
					known("it must pass", float64(max(c.PassMM, c.UnderMM)), Diameter, beneath)},
				make: func(in []float64) float64 { return in[0] - in[1] }}, true
		case f.What == "cover.least" && c.Known:
			return Why{Name: "what the " + name + " grips at its smallest", Value: float64(c.UnderTapeMin), Measure: Diameter,
				Says: "tape diameter of the bundle with every wire at its smallest, and what lies beneath it over " +
					"half of its length at least",
				In: []Input{e.from("tape at its smallest", Figure{What: "branch.tapeleast", Of: f.Of}),
					known("covers beneath add", float64(c.UnderTapeMin-b.TapeMinMM), Diameter, beneath)},
				make: sum}, true
		case f.What == "cover.grip" && c.Known:
			return Why{Name: "how the " + name + " grips", Value: float64(c.Verdict.GripRatio), Measure: Times,
				Says: "tape diameter of what it lies on divided by the bore it recovers to; 1.10 is wanted",
				In: []Input{known("tape diameter it lies on", float64(c.Verdict.GripRatio)*float64(c.Tube.RecoveredMM), Diameter,
					beneath), known("bore recovered", float64(c.Tube.RecoveredMM), Diameter, c.Tube.Origin)},
				make: func(in []float64) float64 { return in[0] / in[1] }}, true
		case f.What == "cover.cut" && c.Known && c.CutMM > 0:
			return Why{Name: "cut of the " + name, Value: float64(c.CutMM), Measure: Length,
				Says: "the covered length divided by 1 less the share it may shorten, up to the next step",
				In: []Input{given("from", float64(c.FromMM), Length), given("to", float64(c.ToMM), Length),
					known("it shortens by at most", float64(c.Tube.LengthChange), Percent, c.Tube.Origin),
					shop("step", float64(e.Limits.CutStepMM), Length, e.H.Rules.CutStepMM.Set)},
				make: func(in []float64) float64 { return upTo((in[1]-in[0])/(1-in[2]), in[3]) }}, true
		case f.What == "cover.over" && c.Known && c.Verdict.Wraps:
			return Why{Name: "over the " + name, Value: float64(c.OverMM), Measure: Diameter,
				Says: "the wall keeps its cross-section, as that of a sheath does",
				In:   []Input{under, known("bore recovered", float64(c.Tube.RecoveredMM), Diameter, c.Tube.Origin), wallOf(c.Tube)},
				make: func(in []float64) float64 { return math.Sqrt(in[0]*in[0] + 4*in[2]*(in[1]+in[2])) }}, true
		case f.What == "cover.over":
			thick := given("thickness", float64(c.ThickMM), Diameter)
			if !mb.Covers[c.At].ThickMM.Set {
				thick = known("thickness", float64(c.ThickMM), Diameter,
					catalogue.Origin{Source: "a lapped tape, a braid of thin tinned wire: from memory", Standing: catalogue.Memory})
			}
			return Why{Name: "over the " + name, Value: float64(c.OverMM), Measure: Diameter,
				Says: "its thickness on both sides of what it lies on", In: []Input{under, thick},
				make: func(in []float64) float64 { return in[0] + 2*in[1] }}, true
		}
	}
	return Why{}, false
}
