package meter

import (
	"strings"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/cavity"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// The drop under load, of feeds alone.

// drop is a feed with the test of it.
type drop struct {
	feed  *model.Feed
	check run.Check
	wire  *model.Wire // whose circuit drops most
}

// drops is each feed whose drop is known, and the names of the others.
func drops(m list.Maker) (known []drop, unknown []string) {
	checks := map[string]run.Check{}
	for _, c := range run.Tests(m.S, run.RunStep{Key: run.HoldLoaded, Kind: run.HoldStep}) {
		checks[c.Name] = c
	}
	for k := range m.H.Feeds {
		f := &m.H.Feeds[k]
		c, ok := checks[f.ID]
		if !ok || len(c.Via) == 0 {
			unknown = append(unknown, f.ID)
			continue
		}
		known = append(known, drop{f, c, m.Wire(c.Via[0])})
	}
	return known, unknown
}

// dropColumns is what both say of a feed.
func dropColumns(m list.Maker) []list.Column[drop] {
	return []list.Column[drop]{
		list.Text("feed", func(d drop) string { return d.feed.ID }),
		list.Text("name", func(d drop) string { return d.feed.Name.V }),
		list.Text("along wire", func(d drop) string { return d.wire.ID }),
		list.Text("from", func(d drop) string { return m.End(d.wire, true) }),
		list.Text("to", func(d drop) string { return m.End(d.wire, false) }),
		list.Figure("load, A", func(d drop) string { return unit.Fixed(d.wire.Amps.V, 2) }),
		list.Figure("expect, V", func(d drop) string { return unit.Fixed(unit.Volt(d.check.Expect), 2) }),
		list.Figure("at most, V", func(d drop) string { return unit.Fixed(unit.Volt(d.check.Limit), 2) }),
		list.Blank[drop]("reading, V"),
		list.Blank[drop]("by"),
	}
}

// DropTable is the loaded drop of the feeds as a file.
func DropTable(m list.Maker) list.Table {
	known, _ := drops(m)
	return list.Of(list.Table{File: "loaded-drop", Title: "Loaded drop"}, dropColumns(m), known)
}

// dropGrid is the loaded drop of the feeds as a block.
func dropGrid(m list.Maker, known []drop) page.Block {
	g := page.TableOf(list.Of(list.Table{}, dropColumns(m), known))
	for _, line := range g.Lines {
		for k, c := range g.Cols {
			if c.Head == "from" || c.Head == "to" {
				line.Cells[k] = cavity.EndCell(line.Cells[k].Text, false)
			}
		}
	}
	return g.Block()
}

// Drop is the loaded drop of the feeds as blocks; of a harness without a feed a sentence.
func Drop(m list.Maker) []page.Block {
	known, unknown := drops(m)
	out := []page.Block{page.SubHeading("Loaded drop")}
	switch {
	case len(m.H.Feeds) == 0:
		return append(out, page.Text("The file has no feed, so no drop under load is listed.", page.Small))
	case len(known) > 0:
		out = append(out, kept(page.Text("On the car: switch the load of each feed on and measure along the circuit that drops "+
			"most, its return "+
			"with it where there is one. The other wires of a feed drop less. Live battery: no rings or watch, tools insulated, and a "+
			"fire extinguisher at hand.", page.Small)), dropGrid(m, known))
	}
	if len(unknown) > 0 {
		out = append(out, page.Text("Not known, since a current, a length or a resistance is missing: "+strings.Join(unknown, ", ")+".",
			page.Small))
	}
	return out
}
