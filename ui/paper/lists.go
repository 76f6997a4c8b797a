package paper

import (
	"fmt"
	"strings"

	"contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
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
	barrel  int // in a file: which of the two
	wire    int // and a wire in it
}

func (m maker) splices() list.Table {
	var paper, file []spliceRow
	for k := range m.S.Splices {
		row := spliceRow{entered: &m.H.Splices[k], worked: &m.S.Splices[k]}
		paper = append(paper, row)
		for b, all := range [][]int{row.worked.Near, row.worked.Far} {
			for _, wire := range all {
				row.barrel, row.wire = b+1, wire
				file = append(file, row)
			}
		}
	}
	wire := func(r spliceRow) *model.Wire { return &m.H.Wires[r.wire] }
	return list.OfBoth(list.Table{File: "splices", Title: "Splices"}, []list.Column[spliceRow]{
		list.Text("splice", func(r spliceRow) string { return r.entered.ID }),
		list.Text("at", func(r spliceRow) string { return r.entered.At }),
		list.Text("sleeve lies", m.sleeveLies).InFile(
			list.Text("along", func(r spliceRow) string { return r.entered.Toward.V }),
			list.Figure(m.In("from its centre"), func(r spliceRow) string { return m.Sys.Length(r.entered.OffsetMM.V) })),
		list.Text("part", func(r spliceRow) string { return list.Dash(r.worked.Part) }).Stands(
			func(r spliceRow) catalogue.Standing { return r.worked.Standing }),
		list.Text("first barrel", func(r spliceRow) string { return m.WireIDs(r.worked.Near) }).InFile(
			list.Figure("barrel", func(r spliceRow) string { return fmt.Sprint(r.barrel) }),
			list.Text("wire", func(r spliceRow) string { return wire(r).ID }), list.SizeOf(wire), list.ColourOf(wire)),
		list.Text("second barrel", func(r spliceRow) string { return m.WireIDs(r.worked.Far) }).InFile(),
		list.Blank[spliceRow]("done").InFile(),
	}, paper, file)
}

func (m maker) sleeveLies(r spliceRow) string {
	if r.entered.Toward.V == "" {
		return "at its centre"
	}
	return fmt.Sprintf("%s %s along %s", m.Sys.Length(r.entered.OffsetMM.V), m.Sys.Name(), r.entered.Toward.V)
}

func (m maker) labels() list.Table {
	line := func(k int) func(lists.Label) string {
		return func(l lists.Label) string {
			if k < len(l.Text) {
				return l.Text[k]
			}
			return ""
		}
	}
	return list.Of(list.Table{File: "labels", Title: "Labels",
		Note: m.Sys.Says("25 to 50 mm off the boot's tail, read from the connector, on the clocked side. Threaded on before the boot.")},
		[]list.Column[lists.Label]{
			list.Text("end", func(l lists.Label) string { return l.Of }),
			list.Text("reads", func(l lists.Label) string { return strings.Join(l.Text, "  ") }).InFile(
				list.Text("text1", line(0)), list.Text("text2", line(1)), list.Text("text3", line(2)),
				list.Figure("copies", func(lists.Label) string { return "1" })),
			list.Text("sleeve", func(l lists.Label) string { return l.Sleeve }),
			list.Figure(m.In("shrinks on"), func(l lists.Label) string { return m.Sys.Diameter(l.OverMM) }),
			list.Text("on the side of", labelSide).InFile(list.Figure("on the side of, o'clock", func(l lists.Label) string {
				if l.OnHours <= 0 {
					return "-"
				}
				return fmt.Sprint(l.OnHours)
			})),
		}, lists.Labels(m.S))
}

func labelSide(l lists.Label) string {
	if l.OnHours <= 0 {
		return "-"
	}
	return fmt.Sprintf("%d o'clock", l.OnHours)
}
