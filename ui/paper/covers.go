package paper

import (
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// coverRow is one cover of a branch, or its sheath.
type coverRow struct {
	what, part, shelf string
	from, to          unit.Millimetre
	cut, over         string
}

// covers is what goes over a branch, inside out.
func (m maker) covers(i int) Table {
	return tableOf(Table{}, []column[coverRow]{
		{"over it", toLeft, func(r coverRow) string { return r.what }},
		{"part", toLeft, func(r coverRow) string { return r.part }},
		{"shelf", toLeft, func(r coverRow) string { return r.shelf }},
		{m.in("start"), toRight, func(r coverRow) string { return m.sys.Length(r.from) }},
		{m.in("stop"), toRight, func(r coverRow) string { return m.sys.Length(r.to) }},
		{m.in("cut"), toRight, func(r coverRow) string { return r.cut }},
		{m.in("over"), toRight, func(r coverRow) string { return r.over }},
		{m.in("measured"), byHand, nil},
	}, m.coverRows(&m.s.Branches[i]))
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
	row := coverRow{what: string(c.What), part: dash(c.Part), shelf: dash(c.Tube.V.ShelfLabel), from: c.FromMM, to: c.ToMM, cut: "-",
		over: m.sys.Diameter(c.OverMM)}
	if c.CutMM > 0 {
		row.cut = m.sys.AtLeast(c.CutMM)
	}
	if c.ThickGuess {
		row.over += "~"
	}
	return row
}

func (m maker) sheathRow(s *sheet.Sheath) coverRow {
	row := coverRow{what: string(model.CoverSheath), part: s.Part, shelf: dash(s.Tube.V.ShelfLabel), from: s.FromMM, to: s.ToMM,
		cut: "-", over: "-"}
	if s.Tube.Set {
		row.cut = m.sys.AtLeast(s.CutMM)
	}
	if s.Verdict.Wraps {
		row.over = m.sys.Diameter(s.Verdict.OverMM) + mem(s.Tube.V.WallStanding)
	}
	return row
}
