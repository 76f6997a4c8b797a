package paper

import (
	"fmt"
	"strings"

	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// What the lists of a build sheet share, and those of splices, parts and labels.

// maker makes the tables of one sheet.
type maker struct{ list.Maker }

func makerOf(s *sheet.Sheet) maker { return maker{list.MakerOf(s)} }

// spliceRow is a splice as it is entered and as it is worked out.
type spliceRow struct {
	entered *model.Splice
	worked  *sheet.Splice
}

func (m maker) splices() list.Table {
	var rows []spliceRow
	for k := range m.S.Splices {
		rows = append(rows, spliceRow{&m.H.Splices[k], &m.S.Splices[k]})
	}
	return list.Of(list.Table{File: "splices", Title: "Splices"}, []list.Column[spliceRow]{
		list.Text("splice", func(r spliceRow) string { return r.entered.ID }),
		list.Text("at", func(r spliceRow) string { return r.entered.At }),
		list.Text("sleeve lies", m.sleeveLies),
		list.Text("part", func(r spliceRow) string { return list.Dash(r.worked.Part) + list.Mem(r.worked.Standing) }),
		list.Text("first barrel", func(r spliceRow) string { return m.WireIDs(r.worked.Near) }),
		list.Text("second barrel", func(r spliceRow) string { return m.WireIDs(r.worked.Far) }),
		list.Blank[spliceRow]("done"),
	}, rows)
}

func (m maker) sleeveLies(r spliceRow) string {
	if r.entered.Toward.V == "" {
		return "at its centre"
	}
	return fmt.Sprintf("%s %s along %s", m.Sys.Length(r.entered.OffsetMM.V), m.Sys.Name(), r.entered.Toward.V)
}

func (m maker) bill() list.Table {
	return list.Of(list.Table{File: "bill", Title: "Bill of material",
		Note: "To order: a tenth more of what is cut, a twentieth more of contacts and plugs, samples to pull; what is on the shelf is " +
			"taken off. Consumables beside it: wipes and solvent for the adhesive, lacing tape or thread, marker ribbon."},
		[]list.Column[lists.BillRow]{
			list.Text("what", func(r lists.BillRow) string { return r.Group }),
			list.Text("part", func(r lists.BillRow) string { return billPart(m.Sys, r) }),
			list.Figure("needed", func(r lists.BillRow) string { return billed(r, r.Need) + list.Mem(r.Standing) }),
			list.Figure("to order", func(r lists.BillRow) string { return billed(r, r.Order) }),
			list.Text("unit", func(r lists.BillRow) string { return map[bool]string{true: "m", false: "pieces"}[r.Metres] }),
			list.Text("says", func(r lists.BillRow) string { return m.Sys.Says(r.Says) }),
		}, lists.Bill(m.S))
}

// billPart is the part of a row; filler is known by its diameter alone.
func billPart(sys unit.System, r lists.BillRow) string {
	if r.Group == "filler" {
		return sys.Says(r.Part)
	}
	return r.Part
}

// billed is how much of a thing, in the unit of its row.
func billed(r lists.BillRow, amount float64) string {
	if r.Metres {
		return unit.Fixed(amount, 1)
	}
	return unit.Fixed(amount, 0)
}

func (m maker) labels() list.Table {
	return list.Of(list.Table{File: "labels", Title: "Labels",
		Note: m.Sys.Says("25 to 50 mm off the boot's tail, read from the connector, on the clocked side. Threaded on before the boot.")},
		[]list.Column[lists.Label]{
			list.Text("end", func(l lists.Label) string { return l.Of }),
			list.Text("reads", func(l lists.Label) string { return strings.Join(l.Text, "  ") }),
			list.Text("sleeve", func(l lists.Label) string { return l.Sleeve }),
			list.Figure(m.In("shrinks on"), func(l lists.Label) string { return m.Sys.Diameter(l.OverMM) }),
			list.Text("on the side of", labelSide),
		}, lists.Labels(m.S))
}

func labelSide(l lists.Label) string {
	if l.OnHours <= 0 {
		return "-"
	}
	return fmt.Sprintf("%d o'clock", l.OnHours)
}
