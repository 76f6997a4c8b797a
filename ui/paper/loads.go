package paper

import (
	"fmt"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// What the wires carry, and what feeds them.

// loadRow is a wire that carries a load, as it is entered and as it is worked out.
type loadRow struct {
	entered *model.Wire
	worked  *sheet.Wire
}

// loads is what each wire carries and bears.
func (m maker) loads() list.Table {
	var rows []loadRow
	for k := range m.H.Wires {
		if w := &m.H.Wires[k]; w.Amps.Set && w.Amps.V > 0 {
			rows = append(rows, loadRow{w, &m.S.Wires[k]})
		}
	}
	return list.Of(list.Table{File: "loads", Title: "Loads and loaded drop",
		Note: "Limits by the least of heat in the bundle, contact, splice and device, with every other current as entered. Measure the " +
			"drop with the load on, along the circuit, return and all."},
		[]list.Column[loadRow]{
			list.Text("wire", func(r loadRow) string { return r.entered.ID }),
			list.Text("signal", func(r loadRow) string { return r.entered.Signal.V }),
			list.Text("size", func(r loadRow) string { return list.Size(r.entered) }),
			list.Figure("carries, A", func(r loadRow) string { return unit.Fixed(r.entered.Amps.V, 2) }),
			list.Figure("heats as, A", func(r loadRow) string { return unit.Fixed(r.worked.Heats, 2) }),
			list.Figure("may carry, A", mayCarry),
			list.Text("bound by", func(r loadRow) string { return r.worked.Bound.V.Where }),
			list.Figure("hottest, C", hottest),
			list.Text("in", func(r loadRow) string { return r.worked.HottestIn }),
			list.Figure("drop to expect, V", dropToExpect),
			list.Blank[loadRow]("measured, V"),
		}, rows)
}

func mayCarry(r loadRow) string {
	if !r.worked.Bound.Set {
		return "-"
	}
	return unit.Fixed(r.worked.Bound.V.Amps, 1) + list.Mem(r.worked.Bound.V.Standing)
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

func (m maker) feeds() list.Table {
	return list.Of(list.Table{File: "feeds", Title: "Feeds"}, []list.Column[model.Feed]{
		list.Text("feed", func(f model.Feed) string { return f.ID }),
		list.Text("name", func(f model.Feed) string { return f.Name.V }),
		list.Text("device", func(f model.Feed) string { return list.Dash(string(f.Device.V)) }),
		list.Figure("rated, A", rated),
		list.Figure("outputs", func(f model.Feed) string { return fmt.Sprint(f.Outputs.Or(1)) }),
		list.Text("wires", func(f model.Feed) string { return strings.Join(f.Wires, ", ") }),
	}, m.H.Feeds)
}

func rated(f model.Feed) string {
	if !f.Amps.Set {
		return "-"
	}
	return unit.Fixed(f.Amps.V, 1)
}
