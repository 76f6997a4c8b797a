package power

import (
	"fmt"
	"math"

	"contralay/calc/formula/derate"
	"contralay/calc/formula/heat"
	"contralay/calc/phase/current"
	"contralay/calc/phase/over"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// How temperatures and limits of current are made.

// fromMemory is where the constants of the heat balance stand.
var fromMemory = catalogue.Origin{Source: "from memory", Standing: catalogue.Memory}

// LimitsOf is all that bounds the current of a wire, in the order of its way: both
// methods for each branch, contacts and splices at its ends, and its device. Bound is the least of it.
func LimitsOf(s *sheet.Sheet, k int) []sheet.Limit {
	return s.Wires[k].Limits
}

func wireBound(e why.Explainer, f why.Figure) (why.Why, bool) {
	k, ok := e.Index.Wire[f.Of]
	if !ok || !e.Wires[k].Bound.Set {
		return why.Why{}, false
	}
	w := why.Why{Name: "current limit of wire " + f.Of, Value: float64(e.Wires[k].Bound.V.Amps), Measure: why.Amperes,
		Says: "Take the lowest limit along the wire: each branch by the public tables and by the heat balance, the contacts and splices " +
			"at its ends, and its fuse",
		Formula: func(in []float64) float64 {
			least := math.Inf(1)
			for _, v := range in {
				least = math.Min(least, v)
			}
			return least
		}}
	for n, l := range LimitsOf(e.Sheet, k) {
		w.In = append(w.In, e.From(l.Where, why.Figure{What: "wire.limit", Of: f.Of, K: n}))
	}
	return w, len(w.In) > 0
}

func wireLimit(e why.Explainer, f why.Figure) (why.Why, bool) {
	k, ok := e.Index.Wire[f.Of]
	if !ok {
		return why.Why{}, false
	}
	all := LimitsOf(e.Sheet, k)
	if f.K < 0 || f.K >= len(all) {
		return why.Why{}, false
	}
	l := all[f.K]
	w := why.Why{Name: "what wire " + f.Of + " may carry: " + l.Where, Value: float64(l.Amps), Measure: why.Amperes}
	if l.Feed {
		return feedLeaves(e, k, w)
	}
	for _, b := range e.Wires[k].Path {
		id := e.H.Branches[b].ID
		for _, c := range e.Branches[b].Warm.Wires {
			if c.Wire == k && l.Where == "heat in "+id {
				margin := float64(e.Limits.BundleMargin)
				w.Says = "In the steady heat balance this current brings its conductor to its rating, with the other wires as entered. " +
					"Multiply it by the margin, because the balance is 10 to 20 % too favourable for dense bundles"
				w.In = []why.Input{why.LookUp(fmt.Sprintf("current that brings it to %s C", unit.Fixed(e.Wires[k].Entry.RatedC, 0)),
					float64(c.Limit.V)/margin, why.Amperes, fromMemory), why.Shop("margin", margin, why.Times, e.H.Rules.BundleMargin.Set)}
				w.Formula = func(in []float64) float64 { return in[0] * in[1] }
				return w, true
			}
		}
		ent, air := e.Wires[k].Entry, e.Branches[b].Ambient
		through := over.WiresOf(e.Sheet, b)
		in := current.DeratingOf(e.Sheet, b, through)
		a, words, ac, ok := current.Derated(e.Sheet, k, b, len(through), in)
		if !ok || l.Where != words {
			continue
		}
		size := catalogue.CanonicalSize(ent.Size)
		if _, is := derate.Table(size, ent.RatedC, len(through), air); is {
			w.Says = "AC 43.13-1B table 11-9 gives it for air of 70 C, 33 wires or more (9 for 8 AWG and thicker), at most 20 % of the " +
				"harness's capacity in use, and 60,000 ft"
			w.In, w.Formula = []why.Input{why.LookUp("table 11-9", float64(a), why.Amperes, ac)}, why.First
			return w, true
		}
		free, _ := derate.FreeAir(size, ent.RatedC-air)
		high, _ := derate.Altitude(unit.Millimetre(e.Limits.AltitudeM * 1000))
		w.Says = "Take the current that one wire in free air may carry for this rise over the air. Multiply it by the factor of a bundle " +
			"with so many wires and so much of its capacity in use"
		w.In = []why.Input{why.LookUp(fmt.Sprintf("one wire in free air, %s C over the air", unit.Fixed(ent.RatedC-air, 0)), float64(free),
			why.Amperes,
			ac),
			why.LookUp(fmt.Sprintf("factor of %d wires", len(through)), float64(in.F), why.Times,
				catalogue.Origin{Source: "bundle chart of MIL-W-5088L", Standing: ac.Standing})}
		w.Formula = func(in []float64) float64 { return in[0] * in[1] }
		if high < 1 {
			w.In = append(w.In, why.LookUp("factor for thin air at "+unit.Fixed(e.Limits.AltitudeM, 0)+" m", float64(high), why.Times,
				fromMemory))
			w.Formula = func(in []float64) float64 { return in[0] * in[1] * in[2] }
		}
		return w, true
	}
	return oneLimit(l, w)
}

func wireHottest(e why.Explainer, f why.Figure) (why.Why, bool) {
	k, ok := e.Index.Wire[f.Of]
	if !ok || !e.Wires[k].HottestC.Set {
		return why.Why{}, false
	}
	id := e.Wires[k].HottestIn
	return why.Why{Name: "hottest point of wire " + f.Of, Value: float64(e.Wires[k].HottestC.V), Measure: why.Celsius,
		Says: "Take the branch in which it is hottest",
		In:   []why.Input{e.From("its conductor in "+id, why.Figure{What: "conductor.hot", Of: id, Part: f.Of})}, Formula: why.First}, true
}

func branchHottest(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, _, b, ok := e.BranchAt(f.Of)
	if !ok || !b.Warm.Known {
		return why.Why{}, false
	}
	return why.Why{Name: "hottest conductor of " + f.Of, Value: float64(b.Warm.HottestC), Measure: why.Celsius,
		Says:    "It is worked out for the currents entered, without margin, in still air",
		In:      []why.Input{e.From("wire "+b.Warm.Hottest, why.Figure{What: "conductor.hot", Of: f.Of, Part: b.Warm.Hottest})},
		Formula: why.First}, true
}

// conductorIn is a conductor of a branch and the bundle it lies in.
func conductorIn(e why.Explainer, f why.Figure) (*sheet.Branch, heat.Bundle, current.Conductor, bool) {
	i, _, b, ok := e.BranchAt(f.Of)
	if !ok || !b.Warm.Known {
		return nil, heat.Bundle{}, current.Conductor{}, false
	}
	balance, wires, ok := current.HeatOf(e.Sheet, i)
	for _, c := range wires {
		if ok && e.H.Wires[c.Wire].ID == f.Part {
			return b, balance, c, true
		}
	}
	return nil, heat.Bundle{}, current.Conductor{}, false
}

func conductorHot(e why.Explainer, f why.Figure) (why.Why, bool) {
	b, balance, c, ok := conductorIn(e, f)
	if !ok {
		return why.Why{}, false
	}
	w := why.Why{Name: "conductor of " + f.Part + " in " + f.Of, Measure: why.Celsius}
	for _, m := range b.Warm.Wires {
		if m.Wire == c.Wire {
			w.Value = float64(m.C)
		}
	}
	t := b.Warm.ShellC[c.Layer]
	grow := (234.5 + float64(t)) / 254.5
	ownHeat, mean := c.Q20(float64(c.Amps))*grow, float64(balance.Shells[c.Layer].At20)*grow/float64(max(c.Count, 1))
	base := e.From("temperature of its layer", why.Figure{What: "branch.shell", Of: f.Of, K: c.Layer})
	w.Says = "Take the temperature of its layer. Add the rise across its own insulation for the heat that it makes above the mean of the " +
		"layer: q ln(d/d_c) / (2 pi k)"
	if len(balance.Shells) == 1 && c.Count == 1 {
		base, mean = e.From("temperature on the outside of the wire", why.Figure{What: "branch.under", Of: f.Of}), 0
		w.Says = "Take the temperature on the outside of the wire. Add the rise of its heat across its insulation: q ln(d/d_c) / (2 pi k)"
	}
	w.In = []why.Input{base, why.LookUp("heat it makes at that temperature", ownHeat, why.WattsPerM,
		catalogue.Origin{Source: "current squared times resistance, with the lay loss", Standing: catalogue.Published}),
		why.LookUp("mean heat of its layer", mean, why.WattsPerM,
			catalogue.Origin{Source: "the same for all of the layer", Standing: catalogue.Published}), why.LookUp("finished diameter",
			float64(c.D), why.Diameter, e.Wires[c.Wire].Dia.Origin),
		why.LookUp("conductor", float64(c.Dc), why.Diameter, e.Wires[c.Wire].Entry.Origin),
		why.LookUp("conductivity of the insulation", float64(heat.InsulationK), why.Times, fromMemory)}
	w.Formula = func(in []float64) float64 {
		return in[0] + math.Max(0, in[1]-in[2])*math.Log(in[3]/in[4])/(2*math.Pi*in[5])
	}
	return w, true
}

func branchShell(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, _, b, ok := e.BranchAt(f.Of)
	if !ok || !b.Warm.Known || f.K < 0 || f.K >= len(b.Warm.ShellC) {
		return why.Why{}, false
	}
	balance, _, ok := current.HeatOf(e.Sheet, i)
	if !ok {
		return why.Why{}, false
	}
	made := func(k int) float64 {
		return float64(balance.Shells[k].At20) * (234.5 + float64(b.Warm.ShellC[k])) / 254.5
	}
	inside := 0.0
	for k := range f.K {
		inside += made(k)
	}
	outer := e.From("temperature under the sheath, or of the surface", why.Figure{What: "branch.under", Of: f.Of})
	if f.K+1 < len(b.Warm.ShellC) {
		outer = e.From(model.LayerName(f.K+1), why.Figure{What: "branch.shell", Of: f.Of, K: f.K + 1})
	}
	ra := 0.0
	if f.K > 0 {
		ra = float64(balance.Shells[f.K-1].OuterMM)
	}
	kEff := float64(heat.Effective(balance.WireK, balance.Fill, (b.Warm.BundleC+b.Warm.ShellC[0])/2))
	amps := catalogue.Origin{Source: "current squared times resistance", Standing: catalogue.Published}
	return why.Why{Name: fmt.Sprintf("temperature in %s of %s", model.LayerName(f.K), f.Of), Value: float64(b.Warm.ShellC[f.K]),
		Measure: why.Celsius,
		Says: "Take the temperature of the layer outside it. Add the rise for the heat from inside and for its own heat: Q ln(b/a) / " +
			"(2 pi k) and q / (2 pi k) (1/2 - a a ln(b/a) / (b b - a a)). On the axis it is q / (4 pi k)",
		In: []why.Input{outer, why.LookUp("heat from inside", inside, why.WattsPerM, amps),
			why.LookUp("heat of this layer", made(f.K), why.WattsPerM, amps),
			why.Exact("inner diameter", ra, why.Diameter), why.Exact("outer diameter", float64(balance.Shells[f.K].OuterMM), why.Diameter),
			why.LookUp("conductivity across wires and air", kEff, why.Times, fromMemory)},
		Formula: func(in []float64) float64 {
			k2 := 2 * math.Pi * in[5]
			if in[3] <= 0 {
				return in[0] + in[2]/(2*k2)
			}
			l := math.Log(in[4] / in[3])
			return in[0] + in[1]/k2*l + in[2]/k2*(0.5-in[3]*in[3]*l/(in[4]*in[4]-in[3]*in[3]))
		}}, true
}

func branchUnder(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, _, b, ok := e.BranchAt(f.Of)
	balance, _, known2 := current.HeatOf(e.Sheet, max(i, 0))
	if !ok || !b.Warm.Known || !known2 {
		return why.Why{}, false
	}
	w := why.Why{Name: "temperature under the sheath of " + f.Of, Value: float64(b.Warm.BundleC), Measure: why.Celsius,
		In: []why.Input{e.From("temperature of the surface", why.Figure{What: "branch.surface", Of: f.Of})}}
	if balance.SheathMM <= b.OverMM {
		w.Name, w.Says, w.Formula = "surface temperature of the bundle of "+f.Of, "The branch has no sheath, so this is its surface",
			why.First
		return w, true
	}
	w.Says = "Take the temperature of the surface. Add the rise of the heat through the sheath: Q ln(outside / inside) / (2 pi k)"
	w.In = append(w.In, why.LookUp("heat of the bundle", float64(b.Warm.WattPerM), why.WattsPerM,
		catalogue.Origin{Source: "currents squared times resistance", Standing: catalogue.Published}), e.From("OD over the sheath",
		why.Figure{What: "tube.over", Of: f.Of, Part: b.Sheath.Part}), e.From("OD", why.Figure{What: "branch.over", Of: f.Of}),
		why.LookUp("conductivity of the sheath", float64(heat.SheathK), why.Times, fromMemory))
	w.Formula = func(in []float64) float64 { return in[0] + in[1]*math.Log(in[2]/in[3])/(2*math.Pi*in[4]) }
	return w, true
}

func branchSurface(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, _, b, ok := e.BranchAt(f.Of)
	balance, _, known2 := current.HeatOf(e.Sheet, max(i, 0))
	if !ok || !b.Warm.Known || !known2 {
		return why.Why{}, false
	}
	d := max(balance.SheathMM, b.OverMM)
	return why.Why{Name: "surface temperature of " + f.Of, Value: float64(b.Warm.SurfaceC), Measure: why.Celsius,
		Says: "At this temperature still air takes away the heat that the wires make: by natural convection from a level cylinder (the " +
			"published formula), and by radiation",
		In: []why.Input{air(e, i), why.LookUp("heat of the bundle", float64(b.Warm.WattPerM), why.WattsPerM,
			catalogue.Origin{Source: "currents squared times resistance", Standing: catalogue.Published}),
			why.Exact("outside diameter", float64(d), why.Diameter),
			why.LookUp("emissivity", float64(heat.Emissivity), why.Times,
				catalogue.Origin{Source: "common practice", Standing: catalogue.Practice})},
		Formula: func(in []float64) float64 {
			lo, hi := in[0], in[0]+2000
			for range 80 {
				t := (lo + hi) / 2
				if float64(heat.Surface(unit.Millimetre(in[2]), unit.Celsius(t), unit.Celsius(in[0]), unit.Ratio(in[3]),
					balance.Pressure)) > in[1] {
					hi = t
				} else {
					lo = t
				}
			}
			return lo
		}}, true
}

// air is the temperature round a branch: its own, the shop's or the default.
func air(e why.Explainer, i int) why.Input {
	b := &e.H.Branches[i]
	return why.Shop("air around "+b.ID, float64(e.Branches[i].Ambient), why.Celsius, b.AmbientC.Set || e.H.Rules.AmbientC.Set)
}
