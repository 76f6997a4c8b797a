package current

import (
	"fmt"

	"contralay/calc/formula/derate"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What the public tables give a wire in a branch: table 11-9 and the method of AC 43.13-1B,
// side by side. Where their data end the last point is held.

// Derating is the factors of a branch, once for all its wires.
type Derating struct {
	F     unit.Ratio // of the bundle
	N     int        // wires that decide it: all, or those that are loaded worst
	Share unit.Ratio // of their capacity in use, the curve of the chart
	High  unit.Ratio // of thin air
	Held  bool
	says  string

	heatIn, aloneIn string
	kinds           map[kind]*tabled
}

// kind is what the tables know a wire by; tabled is what they give it in a branch. Many
// wires are alike.
type kind struct {
	size  string
	rated unit.Celsius
}

type tabled struct {
	size   derate.Size
	ok     bool // a row of the tables stands for it
	free   unit.Ampere
	held   bool
	bounds []Bound
}

// tables is what the tables give a wire of a branch.
func (d *Derating) tables(e catalogue.Wire, air unit.Celsius) *tabled {
	key := kind{e.Size, e.RatedC}
	t := d.kinds[key]
	if t == nil {
		t = &tabled{}
		area, _ := catalogue.MetricArea(e.Size) // where it is given in mm²
		if t.size, t.ok = derate.SizeOf(catalogue.CanonicalSize(e.Size), area); t.ok {
			t.free, t.held = derate.FreeAir(t.size, e.RatedC-air)
		}
		d.kinds[key] = t
	}
	return t
}

// DeratingOf is the factors of a branch.
func DeratingOf(s *sheet.Sheet, b int, through []int) Derating {
	high, held := derate.Altitude(unit.Millimetre(s.Limits.AltitudeM * 1000))
	id := s.H.Branches[b].ID
	out := Derating{High: high, heatIn: HeatIn(id), aloneIn: AloneIn(id), kinds: map[kind]*tabled{}}
	alike := map[derate.Loaded]int{}
	var loads []derate.Loaded
	for _, k := range through {
		one := derate.Loaded{} // of a size that no table can stand for: one of the bundle, and no more is known of it
		if t := out.tables(s.Wires[k].Entry, s.Branches[b].Ambient); t.ok {
			one = derate.Loaded{Used: s.Wires[k].Heats, Free: t.free * unit.Ampere(high)}
		}
		at, met := alike[one]
		if !met {
			at = len(loads)
			alike[one], loads = at, append(loads, one)
		}
		loads[at].Count++
	}
	out.F, out.N, out.Share, out.Held = derate.Factor(loads)
	out.Held = out.Held || held
	out.says = "free air and bundle factor " + unit.Fixed(out.F, 2)
	if high < 1 {
		out.says += fmt.Sprintf(", %s m up", unit.Fixed(s.Limits.AltitudeM, 0))
	}
	out.says += " in " + id
	return out
}

// Bound is a published limit.
type Bound struct {
	Amps  unit.Ampere
	Where string
	Table bool        // of table 11-9; else of the method
	Size  derate.Size // that the tables have for the wire
	Free  unit.Ampere // in free air at sea level; the method only
	Held  bool        // past the last point of the data somewhere
	catalogue.Origin
}

// Published is what the public tables give a wire in a branch of so many wires.
func Published(s *sheet.Sheet, k, b, through int, in *Derating) []Bound {
	e, air := s.Wires[k].Entry, s.Branches[b].Ambient
	t := in.tables(e, air)
	if !t.ok || e.RatedC <= 0 || t.bounds != nil {
		return t.bounds
	}
	add := func(one Bound) {
		one.Size, one.Standing = t.size, catalogue.Published
		if one.Held || !one.Table && (!derate.Read(t.size, in.N) || in.High < 1) {
			one.Standing = catalogue.Memory
		}
		t.bounds = append(t.bounds, one)
	}
	if a, held, ok := derate.Table(t.size, e.RatedC, through, air); ok {
		where := "table 11-9 (33 wires or more at 70 C, 20 % of them loaded) in "
		if held {
			where = "table 11-9, its last value held, in "
		}
		add(Bound{Amps: a, Table: true, Held: held, Origin: catalogue.Origin{Source: "AC 43.13-1B table 11-9"},
			Where: where + s.H.Branches[b].ID})
	}
	add(Bound{Amps: t.free * unit.Ampere(in.F*in.High), Free: t.free, Held: t.held || in.Held, Where: in.says,
		Origin: catalogue.Origin{Source: "AC 43.13-1B, 11-66 to 11-69"}})
	return t.bounds
}
