package paper

import (
	"fmt"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
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
			list.Figure("may carry, A", mayCarry).Stands(func(r loadRow) catalogue.Standing { return r.worked.Bound.V.Standing }),
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
	return unit.Fixed(r.worked.Bound.V.Amps, 1)
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

// feedRow is a feed; in a file with one of its wires.
type feedRow struct {
	model.Feed
	wire string
}

func (m maker) feeds() list.Table {
	var paper, file []feedRow
	for _, f := range m.H.Feeds {
		paper = append(paper, feedRow{f, ""})
		for _, wire := range f.Wires {
			file = append(file, feedRow{f, wire})
		}
		if len(f.Wires) == 0 {
			file = append(file, feedRow{f, ""})
		}
	}
	return list.OfBoth(list.Table{File: "feeds", Title: "Feeds"}, []list.Column[feedRow]{
		list.Text("feed", func(f feedRow) string { return f.ID }),
		list.Text("name", func(f feedRow) string { return f.Name.V }),
		list.Text("device", func(f feedRow) string { return list.Dash(string(f.Device.V)) }),
		list.Figure("rated, A", rated),
		list.Figure("outputs", func(f feedRow) string { return fmt.Sprint(f.Outputs.Or(1)) }),
		list.Text("wires", func(f feedRow) string { return strings.Join(f.Wires, ", ") }).InFile(
			list.Text("wire", func(f feedRow) string { return f.wire })),
	}, paper, file)
}

func rated(f feedRow) string {
	if !f.Amps.Set {
		return "-"
	}
	return unit.Fixed(f.Amps.V, 1)
}
