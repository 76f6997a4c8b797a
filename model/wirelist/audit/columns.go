package audit

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// columns names the columns whose meaning their cells alone say, and their rows: nobody knows the heading, or there is none.
func (a *auditor) columns(t *Table) {
	cols := map[int]bool{}
	headed := false
	for i, c := range t.Cols {
		headed = headed || c.Head != ""
		switch c.Field {
		case name.FieldColour, name.FieldGauge, name.FieldSpec, name.FieldLength, name.FieldCurrent, name.FieldFuse, name.FieldNote:
			continue // a value is what it looks like
		}
		if c.Head != "" && !c.Known() && !c.Given && c.Field != name.FieldKeep && c.Field != name.FieldIgnore && !c.Spared && c.Of == "" {
			cols[i] = true
		}
	}
	if headed && len(cols) == 0 || t.Points || slices.ContainsFunc(t.Rows, func(r table.Row) bool { return r.Point }) {
		return
	}
	var rows []table.Row
	for _, r := range t.Rows {
		if a.row(t, r).wires != nil {
			rows = append(rows, r)
		}
	}
	switch {
	case !headed:
		a.doubt("a table without headings", t.At, "", "its columns are taken by their cells; say what they mean if they are something else",
			rows)
	case len(cols) > 0 && !a.namesHeads(t, cols):
		a.doubt("headings that are not known", t.At, heads(t, cols), "taken by their cells; say what they mean if they are something else",
			rows)
	}
}

// namesHeads reports whether the report says of some columns already that their headings are not known.
func (a *auditor) namesHeads(t *Table, cols map[int]bool) bool {
	for _, f := range a.im.Rep.Findings {
		if f.Rule == "headings that are not known" && f.Sheet == t.At.Sheet && f.File == t.At.File {
			for i := range cols {
				if !t.Cols[i].Guessed {
					return false
				}
			}
			return true
		}
	}
	return false
}
