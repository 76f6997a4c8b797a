package paper

import (
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// coverRow is one cover of a branch, or its sheath.
type coverRow struct {
	what, part, shelf string
	from, to          unit.Millimetre
	cut, over         string
}

// covers is what goes over a branch, inside out.
func (m maker) covers(i int) list.Table {
	return list.Of(list.Table{}, []list.Column[coverRow]{
		list.Text("over it", func(r coverRow) string { return r.what }),
		list.Text("part", func(r coverRow) string { return r.part }),
		list.Text("shelf", func(r coverRow) string { return r.shelf }),
		list.Figure(m.In("start"), func(r coverRow) string { return m.Sys.Length(r.from) }),
		list.Figure(m.In("stop"), func(r coverRow) string { return m.Sys.Length(r.to) }),
		list.Figure(m.In("cut"), func(r coverRow) string { return r.cut }),
		list.Figure(m.In("over"), func(r coverRow) string { return r.over }),
		list.Blank[coverRow](m.In("measured")),
	}, m.coverRows(&m.S.Branches[i]))
}

// coverRows is the covers of a branch inside out, the sheath between those beneath it and
// those over it.
func (m maker) coverRows(b *sheet.Branch) []coverRow {
	var under, outside []coverRow
	for _, c := range b.Covers {
		if c.Under {
			under = append(under, m.coverRow(c))
		} else {
			outside = append(outside, m.coverRow(c))
		}
	}
	if b.Sheath.Part != "" {
		under = append(under, m.sheathRow(&b.Sheath))
	}
	return append(under, outside...)
}

func (m maker) coverRow(c sheet.Covered) coverRow {
	row := coverRow{what: string(c.What), part: list.Dash(c.Part), shelf: list.Dash(c.Tube.V.ShelfLabel),
		from: c.FromMM, to: c.ToMM, cut: "-",
		over: m.Sys.Diameter(c.OverMM)}
	if c.CutMM > 0 {
		row.cut = m.Sys.AtLeast(c.CutMM)
	}
	if c.ThickGuess {
		row.over += "~"
	}
	return row
}

func (m maker) sheathRow(s *sheet.Sheath) coverRow {
	row := coverRow{what: string(model.CoverSheath), part: s.Part, shelf: list.Dash(s.Tube.V.ShelfLabel), from: s.FromMM, to: s.ToMM,
		cut: "-", over: "-"}
	if s.Tube.Set {
		row.cut = m.Sys.AtLeast(s.CutMM)
	}
	if s.Verdict.Wraps {
		row.over = m.Sys.Diameter(s.Verdict.OverMM) + list.Mem(s.Tube.V.WallStanding)
	}
	return row
}
