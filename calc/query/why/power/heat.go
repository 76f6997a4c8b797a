package power

import (
	"fmt"
	"math"

	"contralay/calc/formula/heat"
	"contralay/calc/phase/current"
	"contralay/calc/phase/over"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
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
		Says: "Take the lowest limit along the wire: each branch by the public tables, by the heat balance and for the wire alone in " +
			"the same air, the contacts and splices at its ends, and its fuse",
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
		margin := float64(e.Limits.BundleMargin)
		shops := why.Shop("margin", margin, why.Times, e.H.Rules.BundleMargin.Set)
		rating := "current that brings it to " + unit.Fixed(e.Wires[k].Entry.RatedC, 0) + " C"
		switch l.Where {
		case current.HeatIn(id):
			for _, c := range e.Branches[b].Warm.Bounding() {
				if c.Wire != k {
					continue
				}
				w.Says = "In the steady heat balance of the section this current brings its conductor to its rating, with the other " +
					"wires as entered. Multiply it by the margin, because the balance is too favourable for dense bundles"
				w.In = []why.Input{why.LookUp(rating, float64(c.Limit.V)/margin, why.Amperes, fromMemory), shops}
				w.Formula = func(in []float64) float64 { return in[0] * in[1] }
				return w, true
			}
		case current.AloneIn(id):
			w.Says = "This current brings its conductor to its rating when it runs alone and bare in still air of that temperature. " +
				"Multiply it by the margin. A wire in a bundle may never carry more than the same wire alone"
			w.In = []why.Input{air(e, b), why.LookUp(rating, float64(current.AloneAmps(e.Sheet, k, b))/margin, why.Amperes, fromMemory),
				shops}
			w.Formula = func(in []float64) float64 { return in[1] * in[2] }
			return w, true
		}
		through := over.WiresOf(e.Sheet, b)
		in := current.DeratingOf(e.Sheet, b, through)
		for _, p := range current.Published(e.Sheet, k, b, len(through), &in) {
			if p.Where == l.Where {
				return published(e, k, b, len(through), in, p, w), true
			}
		}
	}
	return oneLimit(l, w)
}

// published explains what the public tables give.
func published(e why.Explainer, k, b, through int, in current.Derating, p current.Bound, w why.Why) why.Why {
	ends := ""
	if p.Held {
		ends = ". The public data end before this case, so their last point is held"
	}
	if p.Size.Held {
		ends += fmt.Sprintf(" (they have no %s: %s AWG is taken for it)", e.Wires[k].Entry.Size, p.Size)
	}
	if p.Table {
		w.Says = "AC 43.13-1B table 11-9 gives it for air of 70 C, 33 wires or more (9 for 8 AWG and thicker), at most 20 % of the " +
			"harness's capacity in use, and 60,000 ft" + ends
		w.In, w.Formula = []why.Input{why.LookUp("table 11-9", float64(p.Amps), why.Amperes, p.Origin)}, why.First
		return w
	}
	count := fmt.Sprintf("factor of %d wires, %s %% in use", in.N, unit.Fixed(100*in.Share, 0))
	if in.N < through {
		ends += fmt.Sprintf(". Of the %d wires the %d that are loaded most give the lowest factor", through, in.N)
	}
	w.Says = "Take the current that one wire in free air may carry for this rise over the air. Multiply it by the factor of a bundle " +
		"with so many wires and so much of its capacity in use" + ends
	rise := e.Wires[k].Entry.RatedC - e.Branches[b].Ambient
	w.In = []why.Input{why.LookUp(fmt.Sprintf("one wire in free air, %s C over the air", unit.Fixed(rise, 0)), float64(p.Free), why.Amperes,
		p.Origin), why.LookUp(count, float64(in.F), why.Times,
		catalogue.Origin{Source: "bundle chart of MIL-W-5088L", Standing: p.Standing})}
	w.Formula = func(in []float64) float64 { return in[0] * in[1] }
	if in.High < 1 {
		w.In = append(w.In, why.LookUp("factor for thin air at "+unit.Fixed(e.Limits.AltitudeM, 0)+" m", float64(in.High), why.Times,
			fromMemory))
		w.Formula = func(in []float64) float64 { return in[0] * in[1] * in[2] }
	}
	return w
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

// balanceOf is a branch's section in balance, as it was solved.
func balanceOf(e why.Explainer, id string) (i int, b *sheet.Branch, sec heat.Section, wires []current.Conductor, r heat.Result, ok bool) {
	i, _, b, ok = e.BranchAt(id)
	if ok = ok && b.Warm.Known; ok {
		sec, wires, ok = current.SectionOf(e.Sheet, i)
	}
	if ok {
		r, ok = b.Warm.Rays.Solve(sec)
	}
	return i, b, sec, wires, r, ok
}

// meets are what lies round something in a section, as inputs: what each conducts to it
// and how warm it is, in pairs.
func meets(e why.Explainer, branch string, sec heat.Section, wires []current.Conductor, round []heat.Meets) (in []why.Input) {
	for _, m := range round {
		name := "filler"
		switch {
		case m.Disc == -1:
			name = "sheath near it"
			if sec.OutsideMM <= sec.InsideMM {
				name = "surface near it"
			}
		case m.Disc == -2:
			name = "air outside"
		case sec.Discs[m.Disc].Ohm <= 0 && sec.Discs[m.Disc].CoreMM > 0:
			name = "jacket"
		}
		for _, c := range wires {
			if c.Disc == m.Disc {
				name = "wire " + e.H.Wires[c.Wire].ID
			}
		}
		in = append(in, why.LookUp("W/(m K) to "+name, float64(m.Conducts), why.Times,
			catalogue.Origin{Source: "insulation and air between them, in slices", Standing: catalogue.Memory}),
			why.LookUp(name, float64(m.C), why.Celsius,
				catalogue.Origin{Source: "the same balance of " + branch, Standing: catalogue.Memory}))
	}
	return in
}

// weighed is the mean of temperatures by what conducts, in pairs from the second input on,
// and what a heat in the first adds.
func weighed(in []float64) float64 {
	conducts, sum := 0.0, in[0]
	for n := 1; n+1 < len(in); n += 2 {
		conducts, sum = conducts+in[n], sum+in[n]*in[n+1]
	}
	return sum / conducts
}

func conductorHot(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, b, sec, wires, r, ok := balanceOf(e, f.Of)
	if !ok {
		return why.Why{}, false
	}
	for n, c := range wires {
		if e.H.Wires[c.Wire].ID != f.Part {
			continue
		}
		t := b.Warm.Wires[n].C
		makes := float64(sec.Discs[c.Disc].At20()) * float64(heat.Grows(t))
		w := why.Why{Name: "conductor of " + f.Part + " in " + f.Of, Measure: why.Celsius, Value: float64(t), Formula: weighed,
			Says: "Take the mean temperature of what lies round it, each by how well heat goes there. Add the heat that the conductor " +
				"makes, " +
				"divided by all that conducts"}
		w.In = append([]why.Input{why.LookUp("heat it makes at that temperature", makes, why.WattsPerM,
			catalogue.Origin{Source: "current squared times resistance, with the lay loss", Standing: catalogue.Published})},
			meets(e, f.Of, sec, wires, r.Round(sec, c.Disc))...)
		return w, true
	}
	return why.Why{}, false
}

func branchUnder(e why.Explainer, f why.Figure) (why.Why, bool) {
	_, b, sec, wires, r, ok := balanceOf(e, f.Of)
	if !ok {
		return why.Why{}, false
	}
	w := why.Why{Name: "warmest place of the sheath of " + f.Of, Value: float64(b.Warm.UnderC), Measure: why.Celsius, Formula: weighed,
		Says: "Take the mean temperature of what lies round that place, each by how well heat goes there: the wires on it, the sheath on " +
			"either side, and the air outside"}
	if sec.OutsideMM <= sec.InsideMM {
		w.Name = "warmest place on the surface of " + f.Of
	}
	w.In = append([]why.Input{why.Exact("heat made there", 0, why.WattsPerM)}, meets(e, f.Of, sec, wires, r.Warmest(sec))...)
	return w, true
}

func branchSurface(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, b, sec, _, _, ok := balanceOf(e, f.Of)
	if !ok {
		return why.Why{}, false
	}
	d := max(sec.OutsideMM, b.OverMM)
	return why.Why{Name: "surface temperature of " + f.Of, Value: float64(b.Warm.SurfaceC), Measure: why.Celsius,
		Says: "At this mean temperature still air takes away the heat that the wires make: by natural convection from a level " +
			"cylinder (the published formula), and by radiation",
		In: []why.Input{air(e, i), why.LookUp("heat of the bundle", float64(b.Warm.WattPerM), why.WattsPerM,
			catalogue.Origin{Source: "currents squared times resistance", Standing: catalogue.Published}),
			why.Exact("outside diameter", float64(d), why.Diameter),
			why.LookUp("emissivity", float64(heat.Emissivity), why.Times,
				catalogue.Origin{Source: "common practice", Standing: catalogue.Practice})},
		Formula: func(in []float64) float64 {
			lo := in[0]
			hi := lo + 2000
			for range 80 {
				t := (lo + hi) / 2
				if float64(heat.Surface(unit.Millimetre(in[2]), unit.Celsius(t), unit.Celsius(in[0]), unit.Ratio(in[3]),
					sec.Pressure)) > in[1] {
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
