package shape

import (
	"fmt"
	"math"
	"slices"

	"contralay/calc/formula/loop"
	overphase "contralay/calc/phase/over"
	"contralay/calc/query/why"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How the figures of loops, of covers beside the sheath, and the floor of a bundle are made.

func branchFloor(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, _, b, ok := e.BranchAt(f.Of)
	if !ok || len(b.Layers) == 0 {
		return why.Why{}, false
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
	w := why.Why{Name: "floor of " + f.Of, Value: float64(overphase.FloorMM(e.Sheet, i)), Measure: why.Diameter,
		Says: "the circle that the areas of its components come to, the root of the sum of their squares: no lay-up of round things " +
			"reaches it",
		Formula: func(in []float64) float64 {
			sum := 0.0
			for k := 0; k+1 < len(in); k += 2 {
				sum += in[k] * in[k+1] * in[k+1]
			}
			return math.Sqrt(sum)
		}}
	for _, d := range sizes {
		w.In = append(w.In, why.Exact(fmt.Sprintf("how many of %s mm", unit.Fixed(d, 2)), float64(n[d]), why.Times),
			why.LookUp("their diameter", float64(d), why.Diameter,
				catalogue.Origin{Source: "over of the components", Standing: b.Standing}))
	}
	return w, true
}

func loopOf(e why.Explainer, f why.Figure) (why.Why, bool) {
	t, ok := e.Index.Termination[f.Of]
	if !ok {
		return why.Why{}, false
	}
	l := overphase.LoopRoomOf(e.Sheet, t)
	term := &e.H.Terminations[t]
	loopLength := why.Given("loop", float64(l.LoopMM), why.Length)
	if !term.LoopMM.Set {
		loopLength = why.Shop("loop", float64(l.LoopMM), why.Length, e.H.Rules.LoopMM.Set)
	}
	if f.What == "loop.length" {
		return why.Why{Name: "loop of " + f.Of, Value: float64(l.LoopMM), Measure: why.Length, Says: "as it is given",
			In:      []why.Input{loopLength},
			Formula: why.First}, true
	}
	if !l.Known {
		return why.Why{}, false
	}
	boot, _ := e.Cat.Boot(term.Boot.V)
	over := unit.Millimetre(0)
	for _, b := range e.Index.Meeting(f.Of) {
		over = max(over, e.Branches[b].OverMM)
	}
	beneath := why.LookUp("over of the bundle", float64(over), why.Diameter,
		catalogue.Origin{Source: "its branch", Standing: catalogue.Memory})
	lip := why.LookUp("lip of "+boot.ID+" as supplied", float64(boot.LipSuppliedMM), why.Diameter, boot.From(boot.Read.LipSupplied))
	long := why.LookUp("length of "+boot.ID, float64(boot.LengthMM), why.Length, boot.From(boot.Read.Length))
	room := func(in []float64) float64 { return math.Max(0, (in[0]-in[1])/2) }
	switch f.What {
	case "loop.room":
		return why.Why{Name: "room for the loop of " + f.Of, Value: float64(l.RoomMM), Measure: why.Diameter,
			Says: "what the boot leaves beside the bundle, on each side", In: []why.Input{lip, beneath}, Formula: room}, true
	case "loop.bow":
		return why.Why{Name: "how far the loop of " + f.Of + " bows", Value: float64(l.BowMM), Measure: why.Diameter,
			Says: "laid in so many bows that leave and meet the bundle along it, as long together as the loop: derived",
			In:   []why.Input{loopLength, long, why.Exact("bows", float64(l.Bows), why.Times)},
			Formula: func(in []float64) float64 {
				off, _ := loop.Bow(unit.Millimetre(in[0]), unit.Millimetre(in[1]), int(in[2]))
				return float64(off)
			}}, true
	case "loop.longest":
		thick := why.LookUp("thickest wire", float64(overphase.ThickestAt(e.Sheet, f.Of)), why.Diameter,
			catalogue.Origin{Source: "its wires", Standing: catalogue.Memory})
		return why.Why{Name: "the longest loop for " + f.Of, Value: float64(l.LongestMM), Measure: why.Length,
			Says: "the longest that lies in the room beside the bundle with no wire bent below three times its thickness",
			In:   []why.Input{lip, beneath, long, thick},
			Formula: func(in []float64) float64 {
				return float64(loop.Longest(unit.Millimetre(in[2]), unit.Millimetre(room(in)), overphase.Supported*unit.Millimetre(in[3])))
			}}, true
	}
	return why.Why{Name: "what the bend of " + boot.ID + " takes", Value: float64(l.TurnMM), Measure: why.Length,
		Says:    "the angle times half the diameter: so much more way have the wires on the outer side",
		In:      []why.Input{beneath, why.Exact("angle, degrees", float64(overphase.BootTurns[boot.Shape]), why.Times)},
		Formula: func(in []float64) float64 { return in[0] / 2 * in[1] * math.Pi / 180 }}, true
}

// coverOver explains a cover beside the sheath: Figure.K is its place in the branch's list.
func coverOver(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, mb, b, ok := e.BranchAt(f.Of)
	if !ok {
		return why.Why{}, false
	}
	for _, c := range b.Covers {
		if c.Index != f.K {
			continue
		}
		beneath := catalogue.Origin{Source: "the bundle, and the covers beneath", Standing: catalogue.Memory}
		under := why.LookUp("over what it lies on", float64(c.UnderMM), why.Diameter, beneath)
		name := string(c.What) + " of " + f.Of
		switch {
		case f.What == "cover.slide" && c.Tube.Set:
			return why.Why{Name: "what the " + name + " has to slide", Value: float64(c.Verdict.SlideMM), Measure: why.Diameter,
				Says: "the bore as supplied less what it must pass",
				In: []why.Input{why.LookUp("bore as supplied", float64(c.Tube.V.SuppliedMM), why.Diameter, c.Tube.V.Origin),
					why.LookUp("it must pass", float64(max(c.PassMM, c.UnderMM)), why.Diameter, beneath)},
				Formula: func(in []float64) float64 { return in[0] - in[1] }}, true
		case f.What == "cover.least" && c.Tube.Set:
			return why.Why{Name: "what the " + name + " grips at its smallest", Value: float64(c.UnderTapeMin), Measure: why.Diameter,
				Says: "tape diameter of the bundle with every wire at its smallest, and what lies beneath it over " +
					"half of its length at least",
				In: []why.Input{e.From("tape at its smallest", why.Figure{What: "branch.tapeleast", Of: f.Of}),
					why.LookUp("covers beneath add", float64(c.UnderTapeMin-b.TapeMinMM), why.Diameter, beneath)},
				Formula: why.Sum}, true
		case f.What == "cover.grip" && c.Tube.Set:
			return why.Why{Name: "how the " + name + " grips", Value: float64(c.Verdict.GripRatio), Measure: why.Times,
				Says: "tape diameter of what it lies on divided by the bore it recovers to; 1.10 is wanted",
				In: []why.Input{why.LookUp("tape diameter it lies on", float64(c.Verdict.GripRatio)*float64(c.Tube.V.RecoveredMM),
					why.Diameter,
					beneath), why.LookUp("bore recovered", float64(c.Tube.V.RecoveredMM), why.Diameter, c.Tube.V.Origin)},
				Formula: func(in []float64) float64 { return in[0] / in[1] }}, true
		case f.What == "cover.cut" && c.Tube.Set && c.CutMM > 0:
			return why.Why{Name: "cut of the " + name, Value: float64(c.CutMM), Measure: why.Length,
				Says: "the covered length divided by 1 less the share it may shorten, up to the next step",
				In: []why.Input{why.Given("from", float64(c.FromMM), why.Length), why.Given("to", float64(c.ToMM), why.Length),
					why.LookUp("it shortens by at most", float64(c.Tube.V.LengthChange), why.Percent, c.Tube.V.Origin),
					why.Shop("step", float64(e.Limits.CutStepMM), why.Length, e.H.Rules.CutStepMM.Set)},
				Formula: func(in []float64) float64 { return upTo((in[1]-in[0])/(1-in[2]), in[3]) }}, true
		case f.What == "cover.over" && c.Tube.Set && c.Verdict.Wraps:
			return why.Why{Name: "over the " + name, Value: float64(c.OverMM), Measure: why.Diameter,
				Says: "the wall keeps its cross-section, as that of a sheath does",
				In: []why.Input{under, why.LookUp("bore recovered", float64(c.Tube.V.RecoveredMM), why.Diameter, c.Tube.V.Origin),
					wallOf(c.Tube.V)},
				Formula: func(in []float64) float64 { return math.Sqrt(in[0]*in[0] + 4*in[2]*(in[1]+in[2])) }}, true
		case f.What == "cover.over":
			thick := why.Given("thickness", float64(c.ThickMM), why.Diameter)
			if !mb.Covers[c.Index].ThickMM.Set {
				thick = why.LookUp("thickness", float64(c.ThickMM), why.Diameter,
					catalogue.Origin{Source: "a lapped tape, a braid of thin tinned wire: from memory", Standing: catalogue.Memory})
			}
			return why.Why{Name: "over the " + name, Value: float64(c.OverMM), Measure: why.Diameter,
				Says: "its thickness on both sides of what it lies on", In: []why.Input{under, thick},
				Formula: func(in []float64) float64 { return in[0] + 2*in[1] }}, true
		}
	}
	return why.Why{}, false
}
