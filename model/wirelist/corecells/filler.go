package corecells

import (
	"slices"

	"contralay/model/wirelist/table"
)

// Filler fills the cells of a row up with empty ones to the widest of a table, so that a new column stands behind all of them; the row
// itself stays as it is.
func Filler(head table.Row, rows []table.Row) func(cells []string) []string {
	wide := len(head.Cells)
	for _, r := range rows {
		wide = max(wide, len(r.Cells))
	}
	return func(cells []string) []string {
		cells = slices.Clone(cells)
		for len(cells) < wide {
			cells = append(cells, "")
		}
		return cells
	}
}
