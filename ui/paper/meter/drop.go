package meter

import (
	"strings"

	"contralay/calc/query/lists"
	"contralay/model/unit"
	"contralay/ui/paper/cavity"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// The drop under load, of feeds alone.

// dropColumns is what both say of a feed.
func dropColumns(m list.Maker) []list.Column[lists.Drop] {
	return []list.Column[lists.Drop]{
		list.Text("feed", func(d lists.Drop) string { return m.H.Feeds[d.Feed].ID }),
		list.Text("name", func(d lists.Drop) string { return m.H.Feeds[d.Feed].Name.V }),
		list.Text("from", func(d lists.Drop) string { return d.From }),
		list.Text("to", func(d lists.Drop) string { return d.To }),
		list.Text("along wires", func(d lists.Drop) string { return wireIDs(m, d.Wires) }),
		list.Text("back by", func(d lists.Drop) string { return wireIDs(m, d.Back) }),
		list.Figure("load, A", func(d lists.Drop) string { return unit.Fixed(d.Amps, 2) }),
		list.Figure("expect, V", expected),
		list.Figure("at most, V", func(d lists.Drop) string { return unit.Fixed(d.Limit, 2) }),
		list.Blank[lists.Drop]("reading, V"),
		list.Blank[lists.Drop]("by"),
	}
}

// expected is the volts to expect, with a digit more where two would say none.
func expected(d lists.Drop) string {
	if d.Expect < 0.005 {
		return unit.Fixed(d.Expect, 3)
	}
	return unit.Fixed(d.Expect, 2)
}

// wireIDs is wires by their ids, in the order of a way.
func wireIDs(m list.Maker, all []int) string {
	var ids []string
	for _, k := range all {
		ids = append(ids, m.H.Wires[k].ID)
	}
	return strings.Join(ids, " ")
}

// DropTable is the loaded drop of the feeds as a file.
func DropTable(m list.Maker) list.Table {
	known, _ := lists.Drops(m.S)
	return list.Of(list.Table{File: "loaded-drop", Title: "Loaded drop"}, dropColumns(m), known)
}

// dropGrid is the loaded drop of the feeds as a block.
func dropGrid(m list.Maker, known []lists.Drop) page.Block {
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
	known, unknown := lists.Drops(m.S)
	head := page.SubHeading("Loaded drop")
	head.Mark = DropMark
	out := []page.Block{head}
	switch {
	case len(m.H.Feeds) == 0:
		return append(out, page.Text("The file has no feed, so no drop under load is listed.", page.Small))
	case len(known) > 0:
		out = append(out, kept(page.Text("On the car: measure from one cavity to the other, then along the return, and add. Each row is "+
			"the way of its feed that drops most. Expect is with all loads of the feed on and the copper as hot as they make it; one "+
			"alone, or cold, drops less. Live battery: no rings or watch, tools insulated, and a fire extinguisher at hand.",
			page.Small)), dropGrid(m, known))
	}
	var partly []string
	for _, d := range known {
		if d.Partly {
			partly = append(partly, m.H.Feeds[d.Feed].ID)
		}
	}
	if len(partly) > 0 {
		out = append(out, page.Text("The drop of another way of "+strings.Join(partly, ", ")+" is not known, and may be more.",
			page.Small))
	}
	if len(unknown) > 0 {
		out = append(out, page.Text("Not known, since a current, a length or a resistance is missing: "+strings.Join(unknown, ", ")+".",
			page.Small))
	}
	return out
}
