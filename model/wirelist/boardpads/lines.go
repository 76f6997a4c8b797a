package boardpads

import (
	"slices"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Lines are the rows of a sheet, those of paragraphs of arrows between the pads of a board and those of modules made a table, with a row
// for each module of a pad.
//
//	GP0 -> GPS RX                     Pin | Goes to
//	3V3 -> Card VCC, GPS VCC    ->    GP0 | GPS:RX
//	                                  3V3 | Card:VCC
//	                                  3V3 | GPS:VCC
//
// Paragraphs without a pad of several modules stay as they are.
func Lines(h shape.Headings, t *table.Table) []table.Row {
	rows := t.Rows
	if h.HeadLine() > 0 || h.Numbered() || h.Recipe != nil {
		return rows
	}
	for i := 0; i+leastRows <= len(rows); i++ {
		pairs := arrowsFrom(rows[i:])
		if len(pairs) < leastRows {
			continue // most rows
		}
		x := columns{near: 0, far: 1, rows: pairs, wide: 2}
		of := x.padsOf()
		if !x.arePads() || !areModules(of, true) || !x.several(of) {
			i += len(pairs) - 1
			continue
		}
		x.signal = true
		head := table.Row{Line: rows[i].Line, Cells: []string{"Pin", "Goes to"}, Made: true, First: t.Marked, Ruled: t.Marked}
		made := x.parted(head, of)
		rows = slices.Concat(rows[:i], made, rows[i+len(pairs):])
		i += len(made) - 1
	}
	return rows
}

// arrowsFrom are the two sides of the arrows of the lines that some rows begin with, up to the end of their paragraph.
func arrowsFrom(rows []table.Row) (pairs []table.Row) {
	for k, r := range rows {
		if len(r.Cells) != 1 || r.Level > 0 || k > 0 && r.Line != rows[k-1].Line+1 {
			break
		}
		near, far, ok := arrow.Cut(r.Cells[0])
		if !ok {
			break
		}
		pairs = append(pairs, table.Row{Line: r.Line, Cells: []string{near, far}})
	}
	return pairs
}

// several reports whether a pad is wired to those of several modules.
func (x columns) several(of map[string]map[string]bool) bool {
	return slices.ContainsFunc(x.rows, func(r table.Row) bool { return len(partPads(cell(r, x.far), of)) > 1 })
}
