package paper

import (
	"fmt"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// What the wires carry, and what feeds them.

// loadRow is a wire that carries a load, as it is entered and as it is worked out.
type loadRow struct {
	entered *model.Wire
	worked  *sheet.Wire
}

// loads is what each wire carries and bears.
func (m maker) loads() Table {
	var rows []loadRow
	for k := range m.h.Wires {
		if w := &m.h.Wires[k]; w.Amps.Set && w.Amps.V > 0 {
			rows = append(rows, loadRow{w, &m.s.Wires[k]})
		}
	}
	return tableOf(Table{File: "loads", Title: "Loads and loaded drop",
		Note: "Limits by the least of heat in the bundle, contact, splice and device, with every other current as entered. Measure the " +
			"drop with the load on, along the circuit, return and all."},
		[]column[loadRow]{
			{"wire", toLeft, func(r loadRow) string { return r.entered.ID }},
			{"signal", toLeft, func(r loadRow) string { return r.entered.Signal.V }},
			{"size", toLeft, func(r loadRow) string { return Size(r.entered) }},
			{"carries, A", toRight, func(r loadRow) string { return unit.Fixed(r.entered.Amps.V, 2) }},
			{"heats as, A", toRight, func(r loadRow) string { return unit.Fixed(r.worked.Heats, 2) }},
			{"may carry, A", toRight, mayCarry},
			{"bound by", toLeft, func(r loadRow) string { return r.worked.Bound.V.Where }},
			{"hottest, C", toRight, hottest},
			{"in", toLeft, func(r loadRow) string { return r.worked.HottestIn }},
			{"drop to expect, V", toRight, dropToExpect},
			{"measured, V", byHand, nil},
		}, rows)
}

func mayCarry(r loadRow) string {
	if !r.worked.Bound.Set {
		return "-"
	}
	return unit.Fixed(r.worked.Bound.V.Amps, 1) + mem(r.worked.Bound.V.Standing)
}

func hottest(r loadRow) string {
	if !r.worked.HottestC.Set {
		return "-"
	}
	return unit.Fixed(r.worked.HottestC.V, 0)
}

func dropToExpect(r loadRow) string {
	if !r.worked.Drop.Set {
		return "-"
	}
	return unit.Fixed(r.worked.Circuit, 2)
}

func (m maker) feeds() Table {
	return tableOf(Table{File: "feeds", Title: "Feeds"}, []column[model.Feed]{
		{"feed", toLeft, func(f model.Feed) string { return f.ID }},
		{"name", toLeft, func(f model.Feed) string { return f.Name.V }},
		{"device", toLeft, func(f model.Feed) string { return dash(string(f.Device.V)) }},
		{"rated, A", toRight, rated},
		{"outputs", toRight, func(f model.Feed) string { return fmt.Sprint(f.Outputs.Or(1)) }},
		{"wires", toLeft, func(f model.Feed) string { return strings.Join(f.Wires, ", ") }},
	}, m.h.Feeds)
}

func rated(f model.Feed) string {
	if !f.Amps.Set {
		return "-"
	}
	return unit.Fixed(f.Amps.V, 1)
}
