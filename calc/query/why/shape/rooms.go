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
	w := why.Why{Name: "lowest possible OD of " + f.Of, Value: float64(overphase.FloorMM(e.Sheet, i)), Measure: why.Diameter,
		Says: "Add the squares of all diameters and take the root. A circle of that size has the area of all pieces together; no lay-up " +
			"of round pieces gets that small",
		Formula: func(in []float64) float64 {
			sum := 0.0
			for k := 0; k+1 < len(in); k += 2 {
				sum += in[k] * in[k+1] * in[k+1]
			}
			return math.Sqrt(sum)
		}}
	for _, d := range sizes {
		w.In = append(w.In, why.Exact(fmt.Sprintf("pieces of %s mm", unit.Fixed(d, 2)), float64(n[d]), why.Times),
			why.LookUp("their diameter", float64(d), why.Diameter,
				catalogue.Origin{Source: "OD of the pieces", Standing: b.Standing}))
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
	loopLength := why.Given("length of the loop", float64(l.LoopMM), why.Length)
	if !term.LoopMM.Set {
		loopLength = why.Shop("length of the loop", float64(l.LoopMM), why.Length, e.H.Rules.LoopMM.Set)
	}
	if f.What == "loop.length" {
		return why.Why{Name: "loop of " + f.Of, Value: float64(l.LoopMM), Measure: why.Length,
			Says:    "It is given in the file, or by a rule",
			In:      []why.Input{loopLength},
			Formula: why.First}, true
	}
	if !l.Known || l.Fits && f.What == "loop.longest" { // of a loop that has room the sheet has no longest
		return why.Why{}, false
	}
	boot, _ := e.Cat.Boot(term.Boot.V)
	over := unit.Millimetre(0)
	for _, b := range e.Index.Meeting(f.Of) {
		over = max(over, e.Branches[b].OverMM)
	}
	beneath := why.LookUp("OD of the bundle", float64(over), why.Diameter,
		catalogue.Origin{Source: "its branch", Standing: catalogue.Memory})
	lip := why.LookUp("lip of "+boot.ID+" as supplied", float64(boot.LipSuppliedMM), why.Diameter, boot.From(boot.Read.LipSupplied))
	long := why.LookUp("length of "+boot.ID, float64(boot.LengthMM), why.Length, boot.From(boot.Read.Length))
	room := func(in []float64) float64 { return math.Max(0, (in[0]-in[1])/2) }
	switch f.What {
	case "loop.room":
		return why.Why{Name: "room for the loop of " + f.Of, Value: float64(l.RoomMM), Measure: why.Diameter,
			Says: "Take the lip as supplied less the OD of the bundle. Half of that is left on each side", In: []why.Input{lip, beneath},
			Formula: room}, true
	case "loop.bow":
		return why.Why{Name: "how far the loop of " + f.Of + " bows out", Value: float64(l.BowMM), Measure: why.Diameter,
			Says: "The loop lies in so many bows, each of which leaves the bundle and meets it again. Together they are as long as the " +
				"loop. The formula is derived, not published",
			In: []why.Input{loopLength, long, why.Exact("number of bows", float64(l.Bows), why.Times)},
			Formula: func(in []float64) float64 {
				off, _ := loop.Bow(unit.Millimetre(in[0]), unit.Millimetre(in[1]), int(in[2]))
				return float64(off)
			}}, true
	case "loop.longest":
		thick := why.LookUp("thickest wire", float64(overphase.ThickestAt(e.Sheet, f.Of)), why.Diameter,
			catalogue.Origin{Source: "its wires", Standing: catalogue.Memory})
		return why.Why{Name: "the longest loop for " + f.Of, Value: float64(l.LongestMM), Measure: why.Length,
			Says: "It is the longest loop that fits between bundle and boot with no wire bent tighter than three times its diameter",
			In:   []why.Input{lip, beneath, long, thick},
			Formula: func(in []float64) float64 {
				return float64(loop.Longest(unit.Millimetre(in[2]), unit.Millimetre(room(in)), overphase.Supported*unit.Millimetre(in[3])))
			}}, true
	}
	return why.Why{Name: "extra length in the bend of " + boot.ID + " for the wires on the outside", Value: float64(l.TurnMM),
		Measure: why.Length,
		Says:    "Multiply half the OD by the angle. The wires on the outside of the bend need this much more length",
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
		under := why.LookUp("OD of what it lies on", float64(c.UnderMM), why.Diameter, beneath)
		name := string(c.What) + " of " + f.Of
		switch {
		case f.What == "cover.slide" && c.Tube.Set:
			return why.Why{Name: "fit of the " + name + ": clearance", Value: float64(c.Verdict.SlideMM), Measure: why.Diameter,
				Says: "Take the supplied bore less what it must pass",
				In: []why.Input{why.LookUp("supplied bore", float64(c.Tube.V.SuppliedMM), why.Diameter, c.Tube.V.Origin),
					why.LookUp("it must pass", float64(max(c.PassMM, c.UnderMM)), why.Diameter, beneath)},
				Formula: func(in []float64) float64 { return in[0] - in[1] }}, true
		case f.What == "cover.least" && c.Tube.Set:
			return why.Why{Name: "fit of the " + name + ": smallest tape diameter it lies on", Value: float64(c.UnderTapeMin),
				Measure: why.Diameter,
				Says: "Take the tape diameter of the bundle with every wire at its smallest. Add the covers that lie beneath it along " +
					"half of its length or more",
				In: []why.Input{e.From("tape diameter at its smallest", why.Figure{What: "branch.tapeleast", Of: f.Of}),
					why.LookUp("covers beneath add", float64(c.UnderTapeMin-b.TapeMinMM), why.Diameter, beneath)},
				Formula: why.Sum}, true
		case f.What == "cover.grip" && c.Tube.Set:
			return why.Why{Name: "fit of the " + name + ": grip ratio", Value: float64(c.Verdict.GripRatio), Measure: why.Times,
				Says: "Divide the tape diameter of what it lies on by the recovered bore; 1.10 is wanted",
				In: []why.Input{why.LookUp("tape diameter of what it lies on", float64(c.Verdict.GripRatio)*float64(c.Tube.V.RecoveredMM),
					why.Diameter,
					beneath), why.LookUp("recovered bore", float64(c.Tube.V.RecoveredMM), why.Diameter, c.Tube.V.Origin)},
				Formula: func(in []float64) float64 { return in[0] / in[1] }}, true
		case f.What == "cover.cut" && c.Tube.Set && c.CutMM > 0:
			return why.Why{Name: "cut length of the " + name, Value: float64(c.CutMM), Measure: why.Length,
				Says: "Divide the covered length by 1 less the share by which it may shorten. Round up to the next step",
				In: []why.Input{why.Given("from", float64(c.FromMM), why.Length), why.Given("to", float64(c.ToMM), why.Length),
					why.LookUp("it may shorten by", float64(c.Tube.V.LengthChange), why.Percent, c.Tube.V.Origin),
					why.Shop("step", float64(e.Limits.CutStepMM), why.Length, e.H.Rules.CutStepMM.Set)},
				Formula: func(in []float64) float64 { return upTo((in[1]-in[0])/(1-in[2]), in[3]) }}, true
		case f.What == "cover.over" && c.Tube.Set && c.Verdict.Wraps:
			return why.Why{Name: "OD over the " + name, Value: float64(c.OverMM), Measure: why.Diameter,
				Says: "The wall keeps its cross-section, as in a sheath",
				In: []why.Input{under, why.LookUp("recovered bore", float64(c.Tube.V.RecoveredMM), why.Diameter, c.Tube.V.Origin),
					wallOf(c.Tube.V)},
				Formula: func(in []float64) float64 { return math.Sqrt(in[0]*in[0] + 4*in[2]*(in[1]+in[2])) }}, true
		case f.What == "cover.over":
			thick := why.Given("thickness", float64(c.ThickMM), why.Diameter)
			if !mb.Covers[c.Index].ThickMM.Set {
				thick = why.LookUp("thickness", float64(c.ThickMM), why.Diameter,
					catalogue.Origin{Source: "a lapped tape, a braid of thin tinned wire: from memory", Standing: catalogue.Memory})
			}
			return why.Why{Name: "OD over the " + name, Value: float64(c.OverMM), Measure: why.Diameter,
				Says: "Add its thickness twice to the OD of what it lies on", In: []why.Input{under, thick},
				Formula: func(in []float64) float64 { return in[0] + 2*in[1] }}, true
		}
	}
	return why.Why{}, false
}
