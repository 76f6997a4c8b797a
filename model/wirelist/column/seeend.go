package column

import (
	"slices"
	"strings"

	"contralay/model/wirelist/endtext"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// SettleSees takes the cavity that a row of a table of cavities refers to for its far end, where the row says nothing else: the wire is
// told there, and it comes from there.
//
//	CN3
//	1 | sensor supply | red | PSU 5
//	2 | see CN1-5
func SettleSees(b *shape.Block) {
	if !b.IsPinTable() {
		return
	}
	to := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldTo })
	own := false // the rows are a copy
	for k, r := range b.Rows {
		at, end := -1, ""
		for i, cell := range r.Cells {
			if value.IsNothing(cell) || i >= len(b.Cols) || b.Cols[i].Field == name.FieldPin || b.Cols[i].Field == name.FieldConnector {
				continue
			}
			if at >= 0 {
				at = -1 // it says something else
				break
			}
			at, end = i, endtext.SeenEnd(cell)
			if of := endtext.SeenConnector(cell); of != "" && names(b, of) {
				end = of
			}
			if end == "" {
				at = -1
				break
			}
		}
		if at < 0 {
			continue
		}
		if !own {
			b.Cols, b.Rows, own = slices.Clone(b.Cols), slices.Clone(b.Rows), true
		}
		if to < 0 {
			wide := len(b.Cols)
			for _, r := range b.Rows {
				wide = max(wide, len(r.Cells))
			}
			for len(b.Cols) < wide {
				b.Cols = append(b.Cols, shape.Column{Field: name.FieldKeep})
			}
			to = wide
			b.Cols = append(b.Cols, shape.Column{Field: name.FieldTo})
		}
		cells := make([]string, max(len(r.Cells), to+1))
		copy(cells, r.Cells)
		cells[at], cells[to] = "", end
		b.Rows[k].Cells = cells
	}
}

// names reports whether a row of the sheet begins with the designator of a connector, or a cell is it.
func names(b *shape.Block, of string) bool {
	return slices.ContainsFunc(b.Table.Rows, func(r table.Row) bool {
		_, text := r.Filled()
		first, _, _ := strings.Cut(text, " ")
		return strings.Trim(first, "*:,") == of || slices.Contains(r.Cells, of)
	})
}
