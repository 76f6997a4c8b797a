package power

import (
	"contralay/calc/formula/pair"
	"contralay/calc/phase/wires"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

func unitOhm(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, ok := e.Index.Unit[f.Of]
	if !ok || !e.Units[i].Pair.Known {
		return why.Why{}, false
	}
	u := &e.Units[i]
	id := e.H.Units[i].Wires[0]
	ent := e.Wires[e.Index.Wire[id]].Entry
	er, soft, _ := pair.Permittivity(ent.Insulation)
	return why.Why{Name: "impedance of " + f.Of, Value: float64(u.Pair.Ohm), Measure: why.Ohms,
		Says: "It is 119.9 / root(e) times arcosh(D/d), with e = 1 + q (er - 1) and q = 0.25 + 0.0004 (or 0.001 for soft insulation) " +
			"times the square of the twist angle in degrees: a published fit of 1971, as quoted. It was fitted to tighter twist than a " +
			"harness has, and to a pair alone in air. A shield, a sheath or wires next to the pair lower the impedance",
		In: []why.Input{e.From("finished diameter", why.Figure{What: "component.over", Part: id}),
			why.LookUp("conductor", float64(sheet.ConductorOf(ent)), why.Diameter, ent.Origin),
			why.Exact("length of one turn", float64(u.LayMM), why.Length),
			why.LookUp("permittivity of "+ent.Insulation, float64(er), why.Times,
				catalogue.Origin{Source: "handbook and a cable maker's table", Standing: catalogue.Published})},
		Formula: func(in []float64) float64 {
			z, _, _ := pair.Impedance(unit.Millimetre(in[0]), unit.Millimetre(in[1]), unit.Millimetre(in[2]), unit.Ratio(in[3]), soft)
			return float64(z)
		}}, true
}

func unitLoop(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, ok := e.Index.Unit[f.Of]
	if !ok || !e.Units[i].Pair.Known {
		return why.Why{}, false
	}
	ent := e.Wires[e.Index.Wire[e.H.Units[i].Wires[0]]].Entry
	return why.Why{Name: "loop resistance of " + f.Of, Value: float64(e.Units[i].Pair.Loop), Measure: why.OhmsPerKm,
		Says: "Add both conductors, each at its highest resistance at 20 C",
		In: []why.Input{why.LookUp("one conductor", float64(ent.OhmPerKm), why.OhmsPerKm,
			catalogue.Origin{Source: ent.Source, Standing: wires.OhmStanding(ent)}), why.Exact("conductors", 2, why.Count)},
		Formula: func(in []float64) float64 { return in[0] * in[1] }}, true
}

// unitBus is the length of a bus, of its longest stub, of all stubs.
func unitBus(e why.Explainer, f why.Figure) (why.Why, bool) {
	i, ok := e.Index.Unit[f.Of]
	if !ok || !e.Units[i].Pair.Bus.Known {
		return why.Why{}, false
	}
	b := e.Units[i].Pair.Bus
	v, name, way := b.MM, "length of the bus of "+f.Of, b.Way[0]
	switch f.What {
	case "unit.stub":
		v, name, way = b.StubMM, "longest stub of the bus of "+f.Of, b.Way[1]
	case "unit.stubs":
		v, name, way = b.AllMM, "all stubs of the bus of "+f.Of, b.Way[2]
	}
	w := why.Why{Name: name, Value: float64(v), Measure: why.Length,
		Says: "Add the finished lengths of its wires, across splices and shared cavities. The longest way from end to end is the bus, " +
			"the rest are stubs", Formula: why.Sum}
	for _, k := range way {
		w.In = append(w.In, e.From(e.H.Wires[k].ID, why.Figure{What: "wire.finished", Of: e.H.Wires[k].ID}))
	}
	return w, len(way) > 0
}
