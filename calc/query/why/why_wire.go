package why

import (
	"fmt"
	"math"

	"contralay/calc"
	"contralay/calc/formula/wire"
	"contralay/calc/phase/bundle"
	"contralay/calc/phase/length"
	"contralay/calc/phase/over"
	"contralay/calc/phase/wires"
	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How the figures of wires, units and the whole loom are made.

func (e Explainer) componentOver(f Figure) (Why, bool) {
	c, ok := e.X.Component(f.Part)
	if !ok {
		return Why{}, false
	}
	w := Why{Name: "over of " + f.Part, Measure: Diameter, make: first0}
	if !c.Unit {
		d, mw := e.Wires[c.At].Dia, &e.H.Wires[c.At]
		if !d.Known() {
			return Why{}, false
		}
		w.Value, w.Says = float64(d.Nominal), "what the wire measures"
		w.In = []Input{known(mw.Spec+" "+mw.Size, float64(d.Nominal), Diameter, d.Origin)}
		return w, true
	}
	u, mu := &e.Units[c.At], &e.H.Units[c.At]
	if !u.Dia.Known() {
		return Why{}, false
	}
	w.Value = float64(u.Dia.Nominal)
	if mu.OverMM.V > 0 {
		w.Says, w.In = "as it was measured, or the maker gives it", []Input{given("over", float64(mu.OverMM.V), Diameter)}
		return w, true
	}
	id, d := "", unit.Millimetre(0)
	for _, m := range mu.Wires {
		if k, ok := e.X.Wire[m]; ok && e.Wires[k].Dia.Nominal > d {
			id, d = m, e.Wires[k].Dia.Nominal
		}
	}
	turns := map[int]float64{2: 2, 3: 1 + 2/math.Sqrt(3), 4: 1 + math.Sqrt2}[len(mu.Wires)]
	w.Says = "the circle round its wires in contact, then braid and jacket where it is shielded"
	w.In = []Input{e.from("thickest wire, "+id, Figure{What: "component.over", Part: id}),
		exact(fmt.Sprintf("circle round %d equal wires", len(mu.Wires)), turns, Times)}
	if mu.Shield.V {
		memory := catalogue.Origin{Source: "from memory: measure it", Standing: catalogue.Memory}
		w.In = append(w.In, known("braid", float64(wire.BraidMM), Diameter, memory),
			known("jacket", float64(wire.JacketMM), Diameter, memory))
	} else {
		w.In[1].Standing = catalogue.Memory
	}
	w.make = func(in []float64) float64 { return in[0]*in[1] + sum(in[2:]) }
	return w, true
}

// memberAt is a component where it lies in a branch.
func (e Explainer) memberAt(branch, id string) (b *sheet.Branch, k int, m sheet.Member, ok bool) {
	_, _, b, ok = e.branchAt(branch)
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

func (e Explainer) componentLoss(f Figure) (Why, bool) {
	b, k, m, ok := e.memberAt(f.Of, f.Part)
	if !ok {
		return Why{}, false
	}
	w := Why{Name: fmt.Sprintf("lay loss of %s in %s", f.Part, f.Of), Value: float64(m.Loss), Measure: Times}
	if b.Layers[k].LayMM <= 0 {
		w.Says, w.In, w.make = "it runs straight", []Input{exact("straight", 1, Times)}, first0
		return w, true
	}
	w.Says = "the root of 1 and the square of 2 pi R / L: R how far it winds off the axis, L the lay length"
	w.In = []Input{exact("it winds at", math.Hypot(float64(m.X), float64(m.Y)), Diameter),
		e.from("lay length", Figure{What: "layer.lay", Of: f.Of, K: k})}
	w.make = func(in []float64) float64 { return math.Hypot(1, 2*math.Pi*in[0]/in[1]) }
	return w, true
}

// componentRun is how long a component is within a branch.
func (e Explainer) componentRun(f Figure) (Why, bool) {
	i, mb, b, ok := e.branchAt(f.Of)
	_, _, m, in := e.memberAt(f.Of, f.Part)
	if !ok || !in {
		return Why{}, false
	}
	_ = i
	laid := min(b.LaidMM, mb.LengthMM)
	return Why{Name: fmt.Sprintf("run of %s in %s", f.Part, f.Of), Value: float64(laid)*float64(m.Loss) + float64(mb.LengthMM-laid),
		Measure: Length,
		Says:    "the laid length times its lay loss, and the rest of the branch straight",
		In: []Input{e.from("laid length", Figure{What: "branch.laid", Of: f.Of}),
			e.from("lay loss", Figure{What: "component.loss", Of: f.Of, Part: f.Part}),
			given("length of "+f.Of, float64(mb.LengthMM), Length)},
		make: func(in []float64) float64 { l := math.Min(in[0], in[2]); return l*in[1] + in[2] - l }}, true
}

func (e Explainer) wireFinished(f Figure) (Why, bool) {
	k, ok := e.X.Wire[f.Of]
	if !ok || e.Wires[k].Finished <= 0 {
		return Why{}, false
	}
	w, mw := &e.Wires[k], &e.H.Wires[k]
	out := Why{Name: "finished length of " + f.Of, Value: float64(w.Finished), Measure: Length,
		Says: "its run in each branch, times what it is twisted in its unit, and the loops that stay in the boots"}
	id, loss := f.Of, given("twist in the unit", 1, Times)
	if u, in := e.X.UnitOf[f.Of]; in {
		id = e.H.Units[u].ID
		loss = exact("twist in unit "+id, float64(e.Units[u].Loss), Times)
	}
	own := e.H.Rules.LoopMM.Set
	out.In = []Input{loss, shop("loop at "+mw.From.V, float64(length.Loop(e.Sheet, mw.From.V)), Length, own),
		shop("loop at "+mw.To.V, float64(length.Loop(e.Sheet, mw.To.V)), Length, own),
		given("splices off their breakout", float64(length.SpliceOffset(e.Sheet, mw.From.V, w.Path)+length.SpliceOffset(e.Sheet, mw.To.V,
			w.Path)), Length)}
	for _, b := range w.Path {
		out.In = append(out.In, e.from("run in "+e.H.Branches[b].ID, Figure{What: "component.run", Of: e.H.Branches[b].ID, Part: id}))
	}
	out.make = func(in []float64) float64 { return in[0]*sum(in[4:]) + in[1] + in[2] + in[3] }
	return out, true
}

func (e Explainer) wireCut(f Figure) (Why, bool) {
	k, ok := e.X.Wire[f.Of]
	if !ok || e.Wires[k].Cut <= 0 {
		return Why{}, false
	}
	unitTail := 0.0
	if _, in := e.X.UnitOf[f.Of]; in {
		unitTail = 50
	}
	r := e.H.Rules
	return Why{Name: "cut length of " + f.Of, Value: float64(e.Wires[k].Cut), Measure: Length,
		Says: "finished length and what is cut off at both ends after pinning, up to the next step",
		In: []Input{e.from("finished length", Figure{What: "wire.finished", Of: f.Of}),
			shop("tail at the start", float64(e.Limits.TailFirstMM), Length, r.TailFirstMM.Set),
			shop("tail at the end", float64(e.Limits.TailSecondMM), Length, r.TailSecondMM.Set),
			shop("more at each end of a unit's wire", unitTail, Length, false),
			shop("step", float64(e.Limits.CutStepMM), Length, r.CutStepMM.Set)},
		make: func(in []float64) float64 { return upTo(in[0]+in[1]+in[2]+2*in[3], in[4]) }}, true
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

func (e Explainer) wireDrop(f Figure) (Why, bool) {
	k, ok := e.X.Wire[f.Of]
	if !ok || !e.Wires[k].DropKnown {
		return Why{}, false
	}
	return e.dropOf(k, float64(e.H.Wires[k].Amps.V), "drop of "+f.Of), true
}

// dropOf explains amps through a wire: each branch at its own temperature.
func (e Explainer) dropOf(k int, amps float64, name string) Why {
	w, id := &e.Wires[k], e.H.Wires[k].ID
	out := Why{Name: name, Measure: Volts, Value: float64(length.DropAt(e.Sheet, k, unit.Ampere(amps))),
		Says: "current times resistance times finished length; the resistance at 20 C grows by (234.5 + T) / 254.5, each branch at its " +
			"own T for its share of the length"}
	out.In = []Input{given("current", amps, Amperes), known("resistance at 20 C at most", float64(w.Entry.OhmPerKm), OhmsPerKm,
		catalogue.Origin{Source: w.Entry.Source, Standing: wires.OhmStanding(w.Entry)}),
		e.from("finished length", Figure{What: "wire.finished", Of: id})}
	for _, b := range w.Path {
		out.In = append(out.In, given("length of "+e.H.Branches[b].ID, float64(e.H.Branches[b].LengthMM), Length), e.air(b))
	}
	out.make = func(in []float64) float64 {
		whole, t := 0.0, 0.0
		for n := 3; n < len(in); n += 2 {
			whole += in[n]
		}
		for n := 3; n < len(in); n += 2 {
			t += in[n] / whole * (234.5 + in[n+1]) / 254.5
		}
		return in[0] * in[1] * in[2] * t / 1e6
	}
	if len(w.Path) == 0 {
		out.In = append(out.In, shop("temperature", float64(e.Limits.AmbientC), Celsius, e.H.Rules.AmbientC.Set))
		out.make = func(in []float64) float64 { return in[0] * in[1] * in[2] * (234.5 + in[3]) / 254.5 / 1e6 }
	}
	return out
}

func (e Explainer) wireCircuit(f Figure) (Why, bool) {
	k, ok := e.X.Wire[f.Of]
	if !ok || !e.Wires[k].DropKnown {
		return Why{}, false
	}
	mw := &e.H.Wires[k]
	out := Why{Name: "drop of the circuit of " + f.Of, Value: float64(e.Wires[k].Circuit), Measure: Volts,
		Says: "its own drop and that of its return",
		In:   []Input{e.from("drop of "+f.Of, Figure{What: "wire.drop", Of: f.Of})}, make: sum}
	if r, has := e.X.Wire[mw.Return.V]; has && r != k {
		amps := wires.ComesBack(e.Sheet, r)
		if e.H.Wires[r].Amps.Set {
			amps = e.H.Wires[r].Amps.V
		}
		back := e.dropOf(r, float64(amps), "")
		out.In = append(out.In, known("drop of its return "+mw.Return.V, back.Made(), Volts,
			catalogue.Origin{Source: "worked out the same way", Standing: back.In[1].Standing}))
	} else {
		out.Says = "its own drop: no return is named"
	}
	return out, true
}

func (e Explainer) branchMass(f Figure) (Why, bool) {
	i, mb, b, ok := e.branchAt(f.Of)
	if !ok || !b.GramKnown {
		return Why{}, false
	}
	out := Why{Name: "mass of the bundle of " + f.Of, Value: float64(b.Gram), Measure: Mass,
		Says: "each component's mass per metre times its run, added up; no sheath"}
	_ = i
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
				if c, ok := e.X.Component(m.ID); ok && !c.Unit {
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
		out.In = append(out.In, known(c.name, g, PerMetre, catalogue.Origin{Source: "catalogue, or worked out of copper and insulation",
			Standing: b.Standing}),
			known(fmt.Sprintf("run of %d of it", c.n), c.mm, Length, catalogue.Origin{Source: "worked out", Standing: b.Standing}))
	}
	out.make = func(in []float64) float64 {
		t := 0.0
		for k := 0; k < len(in); k += 2 {
			t += in[k] * in[k+1] / 1000
		}
		return t
	}
	return out, true
}

func (e Explainer) branchWire(f Figure) (Why, bool) {
	i, _, _, ok := e.branchAt(f.Of)
	if !ok {
		return Why{}, false
	}
	out := Why{Name: "wire that runs through " + f.Of, Measure: Length, Says: "the cut lengths of its wires, whole", make: sum}
	for _, k := range over.WiresOf(e.Sheet, i) {
		if e.Wires[k].Cut > 0 {
			out.Value += float64(e.Wires[k].Cut)
			out.In = append(out.In, e.from(e.H.Wires[k].ID, Figure{What: "wire.cut", Of: e.H.Wires[k].ID}))
		}
	}
	return out, len(out.In) > 0
}

func (e Explainer) loomWire(Figure) (Why, bool) {
	out := Why{Name: "wire of the whole loom", Value: float64(e.Totals.WireMM), Measure: Length, Says: "the cut lengths of all wires",
		make: sum}
	for k := range e.Wires {
		if e.Wires[k].Cut > 0 {
			out.In = append(out.In, e.from(e.H.Wires[k].ID, Figure{What: "wire.cut", Of: e.H.Wires[k].ID}))
		}
	}
	return out, len(out.In) > 0
}

func (e Explainer) loomMass(Figure) (Why, bool) {
	out := Why{Name: "mass of the whole loom", Value: float64(e.Totals.Gram), Measure: Mass,
		Says: "the masses of all bundles; no sheaths, boots or connectors", make: sum}
	for i := range e.Branches {
		if e.Branches[i].GramKnown {
			out.In = append(out.In, e.from(e.H.Branches[i].ID, Figure{What: "branch.mass", Of: e.H.Branches[i].ID}))
		}
	}
	return out, e.Totals.GramKnown && len(out.In) > 0
}

func (e Explainer) optionOver(f Figure) (Why, bool) {
	i, _, _, ok := e.branchAt(f.Of)
	if !ok {
		return Why{}, false
	}
	opts := e.Proposals[bundle.PlanKey(e.Sheet, i)].Options
	if f.K < 0 || f.K >= len(opts) {
		return Why{}, false
	}
	return planOver(opts[f.K].Plan, fmt.Sprintf("over of option %c of %s", 'A'+f.K, f.Of), e.Branches[i].Standing)
}

func (e Explainer) wish(f Figure) (Why, bool) {
	i, _, b, ok := e.branchAt(f.Of)
	if !ok {
		return Why{}, false
	}
	p := e.Proposals[bundle.PlanKey(e.Sheet, i)]
	with, free, v, is, name := p.LeaversWith, p.LeaversFree, p.LeaversMM, p.LeaversKnown, "leavers outside"
	if f.What == "wish.units" {
		with, free, v, is, name = p.UnitsWith, p.UnitsFree, p.UnitsMM, p.UnitsKnown, "units in the centre"
	}
	if !is {
		return Why{}, false
	}
	from := catalogue.Origin{Source: "the planner, as far as it searched", Standing: b.Standing}
	return Why{Name: "what the wish for " + name + " costs", Value: float64(v), Measure: Diameter,
		Says: "over of the best lay-up with the wish, less that of the best without it",
		In:   []Input{known("with it", float64(with), Diameter, from), known("without it", float64(free), Diameter, from)},
		make: func(in []float64) float64 { return in[0] - in[1] }}, true
}

// wishApart lays the branch once more without the wish.
func (e Explainer) wishApart(f Figure) (Why, bool) {
	i, mb, b, ok := e.branchAt(f.Of)
	if !ok || !mb.DataApart.V || len(b.As) == 0 {
		return Why{}, false
	}
	as, mk := b.As, b.Make
	h := e.H.EditBranch(i, func(b *model.Branch) {
		b.Layers, b.Make, b.DataApart = model.CloneLayers(as), model.Some(mk), model.Some(false)
	})
	free := calc.Build(h, e.Cat, nil).Branches[i].OverMM
	from := catalogue.Origin{Source: "laid once more without the wish", Standing: b.Standing}
	return Why{Name: "what keeping data apart costs", Value: float64(b.OverMM - free), Measure: Diameter,
		Says: "over with the wish, less over without it",
		In:   []Input{e.from("with it", Figure{What: "branch.over", Of: f.Of}), known("without it", float64(free), Diameter, from)},
		make: func(in []float64) float64 { return in[0] - in[1] }}, true
}

// reelNeed is how much of a reel is cut.
func (e Explainer) reelNeed(f Figure) (Why, bool) {
	out := Why{Name: "wire of " + f.Of + " " + f.Part, Measure: Length, Says: "the cut lengths of all its wires", make: sum}
	for k := range e.Wires {
		w := &e.H.Wires[k]
		if e.Wires[k].Cut > 0 && w.Spec == f.Of && catalogue.CanonicalSize(w.Size) == f.Part {
			out.Value += float64(e.Wires[k].Cut)
			out.In = append(out.In, e.from(w.ID, Figure{What: "wire.cut", Of: w.ID}))
		}
	}
	return out, len(out.In) > 0
}

// wireTakeUp is what the twist adds to a wire, and what a flat rule would.
func (e Explainer) wireTakeUp(f Figure) (Why, bool) {
	k, ok := e.X.Wire[f.Of]
	if !ok {
		return Why{}, false
	}
	laid, flat, ok := lists.TakeUp(e.Sheet, k)
	if !ok {
		return Why{}, false
	}
	w := &e.H.Wires[k]
	way := unit.Millimetre(0)
	for _, b := range e.Wires[k].Path {
		way += e.H.Branches[b].LengthMM
	}
	way += length.SpliceOffset(e.Sheet, w.From.V, e.Wires[k].Path) + length.SpliceOffset(e.Sheet, w.To.V, e.Wires[k].Path)
	if f.What == "wire.flat" {
		return Why{Name: "what a flat rule would add to " + f.Of, Value: float64(flat), Measure: Length,
			Says: "a fifth of its way, for lay and taping",
			In: []Input{given("its way, branch by branch", float64(way), Length),
				known("share", lists.FlatTakeUp, Times, catalogue.Origin{Source: "a wire association's note on hand-laid bundles",
					Standing: catalogue.Published})}, make: func(in []float64) float64 { return in[0] * in[1] }}, true
	}
	return Why{Name: "what the twist adds to " + f.Of, Value: float64(laid), Measure: Length,
		Says: "its finished length less its loops and its way",
		In: []Input{e.from("finished length", Figure{What: "wire.finished", Of: f.Of}),
			given("loops", float64(length.Loop(e.Sheet, w.From.V)+length.Loop(e.Sheet, w.To.V)), Length),
			given("its way, branch by branch", float64(way), Length)},
		make: func(in []float64) float64 { return in[0] - in[1] - in[2] }}, true
}
