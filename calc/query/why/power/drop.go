package power

import (
	"contralay/calc/phase/current"
	"contralay/calc/phase/wires"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

func wireDrop(e why.Explainer, f why.Figure) (why.Why, bool) {
	k, ok := e.Index.Wire[f.Of]
	if !ok || !e.Wires[k].Drop.Set {
		return why.Why{}, false
	}
	return dropOf(e, k, float64(e.H.Wires[k].Amps.V), "voltage drop of "+f.Of), true
}

// dropOf explains amps through a wire: each branch at its own temperature.
func dropOf(e why.Explainer, k int, amps float64, name string) why.Why {
	w, id := &e.Wires[k], e.H.Wires[k].ID
	out := why.Why{Name: name, Measure: why.Volts, Value: float64(current.DropAt(e.Sheet, k, unit.Ampere(amps))),
		Says: "Multiply current, resistance and finished length. The resistance at 20 C grows by (234.5 + T) / 254.5; each branch counts " +
			"for its share of the length at the T of the conductor in it"}
	out.In = []why.Input{why.Given("current", amps, why.Amperes),
		why.LookUp("highest resistance at 20 C", float64(w.Entry.OhmPerKm), why.OhmsPerKm,
			catalogue.Origin{Source: w.Entry.Source, Standing: wires.OhmStanding(w.Entry)}),
		e.From("finished length", why.Figure{What: "wire.finished", Of: id})}
	for _, b := range w.Path {
		out.In = append(out.In, why.Given("length of "+e.H.Branches[b].ID, float64(e.H.Branches[b].LengthMM), why.Length),
			conductorAt(e, w, id, b))
	}
	out.Formula = func(in []float64) float64 {
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
		out.In = append(out.In, why.Shop("temperature", float64(e.Limits.AmbientC), why.Celsius, e.H.Rules.AmbientC.Set))
		out.Formula = func(in []float64) float64 { return in[0] * in[1] * in[2] * (234.5 + in[3]) / 254.5 / 1e6 }
	}
	return out
}

// conductorAt is how warm a wire's conductor is in a branch, or the air where its heat is
// not known.
func conductorAt(e why.Explainer, w *sheet.Wire, id string, b int) why.Input {
	for _, c := range e.Branches[b].Warm.Wires {
		if &e.Wires[c.Wire] == w {
			return e.From("conductor in "+e.H.Branches[b].ID, why.Figure{What: "conductor.hot", Of: e.H.Branches[b].ID, Part: id})
		}
	}
	return air(e, b)
}

func wireCircuit(e why.Explainer, f why.Figure) (why.Why, bool) {
	k, ok := e.Index.Wire[f.Of]
	if !ok || !e.Wires[k].Drop.Set {
		return why.Why{}, false
	}
	mw := &e.H.Wires[k]
	out := why.Why{Name: "voltage drop of the circuit of " + f.Of, Value: float64(e.Wires[k].Circuit), Measure: why.Volts,
		Says: "Add its own drop and the drop of its return",
		In:   []why.Input{e.From("voltage drop of "+f.Of, why.Figure{What: "wire.drop", Of: f.Of})}, Formula: why.Sum}
	if r, has := e.Index.Wire[mw.Return.V]; has && r != k {
		amps := wires.ComesBack(e.Sheet, r)
		if e.H.Wires[r].Amps.Set {
			amps = e.H.Wires[r].Amps.V
		}
		back := dropOf(e, r, float64(amps), "")
		out.In = append(out.In, why.LookUp("voltage drop of its return "+mw.Return.V, back.Made(), why.Volts,
			catalogue.Origin{Source: "worked out the same way", Standing: back.In[1].Standing}))
	} else {
		out.Says = "It is its own drop, because no return is named"
	}
	return out, true
}
