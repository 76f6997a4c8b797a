package draft

import (
	"slices"

	"contralay/model/wirelist/table"
)

// SayOf enters what a person should know of some items that were taken together: a line for each sheet that tells of them, with all
// their rows there.
func (im *Importer) SayOf(all []*Item, rule, what, did string) {
	by := map[table.Place][]table.Row{}
	var order []table.Place
	for _, it := range all {
		at := table.Place{File: it.Place.File, Sheet: it.Place.Sheet}
		if by[at] == nil {
			order = append(order, at)
		}
		by[at] = append(by[at], table.Row{Line: it.Place.Row})
	}
	for _, at := range order {
		rows := by[at]
		slices.SortStableFunc(rows, func(a, b table.Row) int { return a.Line - b.Line })
		at.Row = rows[0].Line
		im.Doubt(rule, at, what, did, rows)
	}
}
