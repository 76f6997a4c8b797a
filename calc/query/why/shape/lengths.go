package shape

import (
	"fmt"
	"math"

	"contralay/calc"
	"contralay/calc/formula/wire"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/length"
	"contralay/calc/phase/over"
	"contralay/calc/query/lists"
	"contralay/calc/query/why"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How the figures of wires, units and the whole loom are made.

// circleRound is the circle round so many equal wires in contact, in their diameters.
var circleRound = map[int]float64{2: 2, 3: 1 + 2/math.Sqrt(3), 4: 1 + math.Sqrt2}

func componentOver(e why.Explainer, f why.Figure) (why.Why, bool) {
	c, ok := e.Index.Component(f.Part)
	if !ok {
		return why.Why{}, false
	}
	w := why.Why{Name: "OD of " + f.Part, Measure: why.Diameter, Formula: why.First}
	if !c.Unit {
		d, mw := e.Wires[c.At].Dia, &e.H.Wires[c.At]
		if !d.Known() {
			return why.Why{}, false
		}
		w.Value, w.Says = float64(d.Nominal), "It is the diameter of the wire"
		w.In = []why.Input{why.LookUp(mw.Spec+" "+mw.Size, float64(d.Nominal), why.Diameter, d.Origin)}
		return w, true
	}
	u, mu := &e.Units[c.At], &e.H.Units[c.At]
	if !u.Dia.Known() {
		return why.Why{}, false
	}
	w.Value = float64(u.Dia.Nominal)
	if mu.OverMM.V > 0 {
		w.Says, w.In = "It was measured, or the maker gives it", []why.Input{why.Given("OD", float64(mu.OverMM.V), why.Diameter)}
		return w, true
	}
	id, d := "", unit.Millimetre(0)
	for _, m := range mu.Wires {
		if k, ok := e.Index.Wire[m]; ok && e.Wires[k].Dia.Nominal > d {
			id, d = m, e.Wires[k].Dia.Nominal
		}
	}
	turns := circleRound[len(mu.Wires)]
	w.Says = "Take the circle round its wires, which touch. If it is shielded, add braid and jacket"
	w.In = []why.Input{e.From("thickest wire, "+id, why.Figure{What: "component.over", Part: id}),
		why.Exact(fmt.Sprintf("factor of the circle round %d equal wires", len(mu.Wires)), turns, why.Times)}
	if mu.Shield.V {
		memory := catalogue.Origin{Source: "from memory: measure it", Standing: catalogue.Memory}
		w.In = append(w.In, why.LookUp("braid", float64(wire.BraidMM), why.Diameter, memory),
			why.LookUp("jacket", float64(wire.JacketMM), why.Diameter, memory))
	} else {
		w.In[1].Standing = catalogue.Memory
	}
	w.Formula = func(in []float64) float64 { return in[0]*in[1] + why.Sum(in[2:]) }
	return w, true
}

func componentLoss(e why.Explainer, f why.Figure) (why.Why, bool) {
	b, k, m, ok := e.MemberAt(f.Of, f.Part)
	if !ok {
		return why.Why{}, false
	}
	w := why.Why{Name: fmt.Sprintf("lay loss of %s in %s", f.Part, f.Of), Value: float64(m.Loss), Measure: why.Times}
	if b.Layers[k].LayMM <= 0 {
		w.Says, w.In, w.Formula = "It runs straight", []why.Input{why.Exact("straight", 1, why.Times)}, why.First
		return w, true
	}
	w.Says = "Take the root of 1 plus the square of 2 pi R / L. R is its distance from the axis, L is the lay length"
	w.In = []why.Input{why.Exact("distance from the axis", math.Hypot(float64(m.X), float64(m.Y)), why.Diameter),
		e.From("lay length", why.Figure{What: "layer.lay", Of: f.Of, K: k})}
	w.Formula = func(in []float64) float64 { return math.Hypot(1, 2*math.Pi*in[0]/in[1]) }
	return w, true
}

// componentRun is how long a component is within a branch.
func componentRun(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, mb, b, ok := e.BranchAt(f.Of)
	_, _, m, in := e.MemberAt(f.Of, f.Part)
	if !ok || !in {
		return why.Why{}, false
	}
	laid := min(b.LaidMM, mb.LengthMM)
	return why.Why{Name: fmt.Sprintf("run of %s in %s", f.Part, f.Of), Value: float64(laid)*float64(m.Loss) + float64(mb.LengthMM-laid),
		Measure: why.Length,
		Says:    "Multiply the laid length by the lay loss. Add the rest of the branch, where it runs straight",
		In: []why.Input{e.From("laid length", why.Figure{What: "branch.laid", Of: f.Of}),
			e.From("lay loss", why.Figure{What: "component.loss", Of: f.Of, Part: f.Part}),
			why.Given("length of "+f.Of, float64(mb.LengthMM), why.Length)},
		Formula: func(in []float64) float64 { l := math.Min(in[0], in[2]); return l*in[1] + in[2] - l }}, true
}

func wireFinished(e why.Explainer, f why.Figure) (why.Why, bool) {
	k, ok := e.Index.Wire[f.Of]
	if !ok || e.Wires[k].Finished <= 0 {
		return why.Why{}, false
	}
	w, mw := &e.Wires[k], &e.H.Wires[k]
	out := why.Why{Name: "finished length of " + f.Of, Value: float64(w.Finished), Measure: why.Length,
		Says: "Add its run in each branch and multiply by the twist in its unit. Add the loops that stay in the boots, and the way to " +
			"splices away from their breakout"}
	id, loss := f.Of, why.Given("twist in the unit", 1, why.Times)
	if u, in := e.Index.UnitOf[f.Of]; in {
		id = e.H.Units[u].ID
		loss = why.Exact("twist in unit "+id, float64(e.Units[u].Loss), why.Times)
	}
	ownRule := e.H.Rules.LoopMM.Set
	out.In = []why.Input{loss, why.Shop("loop at "+mw.From.V, float64(length.Loop(e.Sheet, mw.From.V)), why.Length, ownRule),
		why.Shop("loop at "+mw.To.V, float64(length.Loop(e.Sheet, mw.To.V)), why.Length, ownRule),
		why.Given("way to splices away from their breakout",
			float64(length.SpliceOffset(e.Sheet, mw.From.V, w.Path)+length.SpliceOffset(e.Sheet, mw.To.V,
				w.Path)), why.Length)}
	for _, b := range w.Path {
		out.In = append(out.In, e.From("run in "+e.H.Branches[b].ID, why.Figure{What: "component.run", Of: e.H.Branches[b].ID, Part: id}))
	}
	out.Formula = func(in []float64) float64 { return in[0]*why.Sum(in[4:]) + in[1] + in[2] + in[3] }
	return out, true
}

func wireCut(e why.Explainer, f why.Figure) (why.Why, bool) {
	k, ok := e.Index.Wire[f.Of]
	if !ok || e.Wires[k].Cut <= 0 {
		return why.Why{}, false
	}
	unitTail := 0.0
	if _, in := e.Index.UnitOf[f.Of]; in {
		unitTail = 50
	}
	r := e.H.Rules
	return why.Why{Name: "cut length of " + f.Of, Value: float64(e.Wires[k].Cut), Measure: why.Length,
		Says: "Take the finished length. Add what is cut off at both ends after pinning, and round up to the next step",
		In: []why.Input{e.From("finished length", why.Figure{What: "wire.finished", Of: f.Of}),
			why.Shop("tail at the start", float64(e.Limits.TailFirstMM), why.Length, r.TailFirstMM.Set),
			why.Shop("tail at the end", float64(e.Limits.TailSecondMM), why.Length, r.TailSecondMM.Set),
			why.Shop("extra at each end of a wire in a unit", unitTail, why.Length, false),
			why.Shop("step", float64(e.Limits.CutStepMM), why.Length, r.CutStepMM.Set)},
		Formula: func(in []float64) float64 { return upTo(in[0]+in[1]+in[2]+2*in[3], in[4]) }}, true
}

// upTo is the next multiple of a step, told apart from unit.UpTo so that the
// explanation does its own arithmetic.
func upTo(v, step float64) float64 {
	if step <= 0 {
		return v
	}
	n := math.Floor(v / step)
	for n*step < v-1e-6*step {
		n++
	}
	return n * step
}

func branchMass(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, mb, b, ok := e.BranchAt(f.Of)
	if !ok || !b.Gram.Set {
		return why.Why{}, false
	}
	out := why.Why{Name: "mass of the bundle of " + f.Of, Value: float64(b.Gram.V), Measure: why.Mass,
		Says: "Multiply the mass per metre of each piece by its run, and add up. The sheath is not in it"}
	laid := min(b.LaidMM, mb.LengthMM)
	type group struct {
		name string
		n    int
		mm   float64
	}
	var order []float64
	groups := map[float64]*group{}
	for _, l := range b.Layers {
		for _, m := range l.Members {
			g := float64(length.GramPerM(e.Sheet, m, l))
			if groups[g] == nil {
				name := m.ID
				if c, ok := e.Index.Component(m.ID); ok && !c.Unit {
					name = e.H.Wires[c.At].Spec + " " + e.H.Wires[c.At].Size
				}
				groups[g], order = &group{name: name}, append(order, g)
			}
			groups[g].n++
			groups[g].mm += float64(laid)*float64(m.Loss) + float64(mb.LengthMM-laid)
		}
	}
	for _, g := range order {
		c := groups[g]
		out.In = append(out.In, why.LookUp(c.name, g, why.PerMetre,
			catalogue.Origin{Source: "catalogue, or worked out from copper and insulation",
				Standing: b.Standing}),
			why.LookUp(fmt.Sprintf("run of all %d together", c.n), c.mm, why.Length,
				catalogue.Origin{Source: "worked out", Standing: b.Standing}))
	}
	out.Formula = func(in []float64) float64 {
		t := 0.0
		for k := 0; k < len(in); k += 2 {
			t += in[k] * in[k+1] / 1000
		}
		return t
	}
	return out, true
}

func branchWire(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, _, _, ok := e.BranchAt(f.Of)
	if !ok {
		return why.Why{}, false
	}
	out := why.Why{Name: "wire that runs through " + f.Of, Measure: why.Length, Says: "Add the cut lengths of its wires, each as a whole",
		Formula: why.Sum}
	for _, k := range over.WiresOf(e.Sheet, i) {
		if e.Wires[k].Cut > 0 {
			out.Value += float64(e.Wires[k].Cut)
			out.In = append(out.In, e.From(e.H.Wires[k].ID, why.Figure{What: "wire.cut", Of: e.H.Wires[k].ID}))
		}
	}
	return out, len(out.In) > 0
}

func loomWire(e why.Explainer, _ why.Figure) (why.Why, bool) {
	out := why.Why{Name: "wire for the whole harness", Value: float64(e.Totals.WireMM), Measure: why.Length,
		Says:    "Add the cut lengths of all wires",
		Formula: why.Sum}
	for k := range e.Wires {
		if e.Wires[k].Cut > 0 {
			out.In = append(out.In, e.From(e.H.Wires[k].ID, why.Figure{What: "wire.cut", Of: e.H.Wires[k].ID}))
		}
	}
	return out, len(out.In) > 0
}

func loomMass(e why.Explainer, _ why.Figure) (why.Why, bool) {
	out := why.Why{Name: "mass of the whole harness", Value: float64(e.Totals.Gram.V), Measure: why.Mass,
		Says: "Add the masses of all bundles. Sheaths, boots and connectors are not in it", Formula: why.Sum}
	for i := range e.Branches {
		if e.Branches[i].Gram.Set {
			out.In = append(out.In, e.From(e.H.Branches[i].ID, why.Figure{What: "branch.mass", Of: e.H.Branches[i].ID}))
		}
	}
	return out, e.Totals.Gram.Set && len(out.In) > 0
}

func optionOver(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, _, _, ok := e.BranchAt(f.Of)
	if !ok {
		return why.Why{}, false
	}
	p := e.Proposals[bundle.PlanKey(e.Sheet, i)]
	if f.K < 0 || f.K >= len(p.Options) {
		return why.Why{}, false
	}
	return planOver(p.Options[f.K].Plan, fmt.Sprintf("OD of option %c of %s", p.Letter(f.K), f.Of), e.Branches[i].Standing)
}

func wish(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, _, b, ok := e.BranchAt(f.Of)
	if !ok {
		return why.Why{}, false
	}
	p := e.Proposals[bundle.PlanKey(e.Sheet, i)]
	with, free, v, is, name := p.LeaversWith, p.LeaversFree, p.LeaversMM.V, p.LeaversMM.Set, "early leavers on the outside"
	if f.What == "wish.units" {
		with, free, v, is, name = p.UnitsWith, p.UnitsFree, p.UnitsMM.V, p.UnitsMM.Set, "units in the centre"
	}
	if !is {
		return why.Why{}, false
	}
	from := catalogue.Origin{Source: "the best that the planner found", Standing: b.Standing}
	return why.Why{Name: "what the preference for " + name + " costs", Value: float64(v), Measure: why.Diameter,
		Says: "Take the OD of the best lay-up with the preference, less the OD of the best without it",
		In: []why.Input{why.LookUp("with it", float64(with), why.Diameter, from),
			why.LookUp("without it", float64(free), why.Diameter, from)},
		Formula: func(in []float64) float64 { return in[0] - in[1] }}, true
}

// wishApart lays the branch once more without the wish.
func wishApart(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, mb, b, ok := e.BranchAt(f.Of)
	if !ok || !mb.DataApart.V || len(b.As) == 0 {
		return why.Why{}, false
	}
	as, mk := b.As, b.Make
	h := e.H.EditBranch(i, func(b *model.Branch) {
		b.Layers, b.Make, b.DataApart = model.CloneLayers(as), model.Some(mk), model.Some(false)
	})
	free := calc.Build(h, e.Cat, nil).Branches[i].OverMM
	from := catalogue.Origin{Source: "laid again without the preference", Standing: b.Standing}
	return why.Why{Name: "what keeping data apart costs", Value: float64(b.OverMM - free), Measure: why.Diameter,
		Says: "Take the OD with the preference, less the OD without it",
		In: []why.Input{e.From("with it", why.Figure{What: "branch.over", Of: f.Of}),
			why.LookUp("without it", float64(free), why.Diameter, from)},
		Formula: func(in []float64) float64 { return in[0] - in[1] }}, true
}

// reelNeed is how much of a reel is cut.
func reelNeed(e why.Explainer, f why.Figure) (why.Why, bool) {
	out := why.Why{Name: "length to cut of " + f.Of + " " + f.Part, Measure: why.Length, Says: "Add the cut lengths of all its wires",
		Formula: why.Sum}
	for k := range e.Wires {
		w := &e.H.Wires[k]
		if e.Wires[k].Cut > 0 && w.Spec == f.Of && catalogue.CanonicalSize(w.Size) == f.Part {
			out.Value += float64(e.Wires[k].Cut)
			out.In = append(out.In, e.From(w.ID, why.Figure{What: "wire.cut", Of: w.ID}))
		}
	}
	return out, len(out.In) > 0
}

// wireTakeUp is what the twist adds to a wire, and what a flat rule would.
func wireTakeUp(e why.Explainer, f why.Figure) (why.Why, bool) {
	k, ok := e.Index.Wire[f.Of]
	if !ok {
		return why.Why{}, false
	}
	laid, flat, ok := lists.TakeUp(e.Sheet, k)
	if !ok {
		return why.Why{}, false
	}
	w := &e.H.Wires[k]
	way := unit.Millimetre(0)
	for _, b := range e.Wires[k].Path {
		way += e.H.Branches[b].LengthMM
	}
	way += length.SpliceOffset(e.Sheet, w.From.V, e.Wires[k].Path) + length.SpliceOffset(e.Sheet, w.To.V, e.Wires[k].Path)
	if f.What == "wire.flat" {
		return why.Why{Name: "what a flat rule would add to " + f.Of, Value: float64(flat), Measure: why.Length,
			Says: "It is a fifth of the wire's way, for lay and taping",
			In: []why.Input{why.Given("its way, branch by branch", float64(way), why.Length),
				why.LookUp("share", lists.FlatTakeUp, why.Times, catalogue.Origin{Source: "a wire association's note on hand-laid bundles",
					Standing: catalogue.Published})}, Formula: func(in []float64) float64 { return in[0] * in[1] }}, true
	}
	return why.Why{Name: "what the twist adds to " + f.Of, Value: float64(laid), Measure: why.Length,
		Says: "Take its finished length, less its loops and its way",
		In: []why.Input{e.From("finished length", why.Figure{What: "wire.finished", Of: f.Of}),
			why.Given("loops", float64(length.Loop(e.Sheet, w.From.V)+length.Loop(e.Sheet, w.To.V)), why.Length),
			why.Given("its way, branch by branch", float64(way), why.Length)},
		Formula: func(in []float64) float64 { return in[0] - in[1] - in[2] }}, true
}
