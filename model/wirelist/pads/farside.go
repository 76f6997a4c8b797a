package pads

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// TitledAs is the table of a sheet whose title is the heading of a column of another one, and whose first cells are the cells of that
// column: they are the far cavities of its wires. titles are those of the table in hand; "" where no other one is.
//
//	## Gate board            ## Beacon
//	Pin | Goes to            Pin | Gate board
//	B3  | Beacon IN          IN  | B3
func TitledAs(sheet []table.Row, titles []table.Row, rows []table.Row, i int, head string) string {
	if len(sheet) > mostSheet {
		return ""
	}
	for k, r := range sheet {
		if !shape.IsText(r) || slices.ContainsFunc(titles, func(o table.Row) bool { return o.Line == r.Line }) {
			continue
		}
		_, text := r.Filled()
		if called, ok := calls(text, head); ok && cellsAre(rows, i, firstCells(sheet[k+1:])) {
			return called
		}
	}
	return ""
}

// mostSheet is how many rows a sheet may have that is looked through for each table of it: a document, not a data base (no source).
const mostSheet = 2000

// Lands reports whether a row says a cavity of the device that a heading names, where its wire goes.
func Lands(b *shape.Block, cells []string) bool {
	p, i := b.CellAt(cells, name.FieldToPin)
	return i >= 0 && b.Cols[i].Of != "" && !value.IsNothing(p) && name.StateOf(p) == name.Used
}

// calls reports whether a heading of a column is that of a table, as a whole or without what stands in brackets there.
func calls(title, head string) (called string, ok bool) {
	called = name.ConnectorName(title)
	h := strings.Join(name.Words(table.Fold(head)), " ")
	if h == "" {
		return "", false
	}
	for _, t := range []string{title, called, name.WithoutBrackets(title)} {
		if strings.Join(name.Words(table.Fold(t)), " ") == h {
			return called, true
		}
	}
	return "", false
}

// firstCells are the first cells of some rows, up to the next text behind the first of them.
func firstCells(rows []table.Row) map[string]bool {
	all := map[string]bool{}
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if shape.IsText(r) {
			if len(all) > 0 {
				break
			}
			continue
		}
		_, first := r.Filled()
		all[table.Fold(first)] = true
	}
	return all
}

// cellsAre reports whether the cells of a column are all some cavities, but for those that say a place is free.
func cellsAre(rows []table.Row, i int, cavities map[string]bool) bool {
	n := 0
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) || name.StateOf(r.Cells[i]) != name.Used {
			continue
		}
		if !cavities[table.Fold(r.Cells[i])] {
			return false
		}
		n++
	}
	return n > 0
}
