package column

import (
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// PlacesBeginAgain reports whether the cells of a column are places of the things in another, which is written once for its rows or in
// each: two of these have the first of their places in common, some has several, and none has one twice.
//
//	BAR 1 | 1 | live
//	      | 2 | neutral
//	BAR 2 | 1 | live
//	      | 2 | neutral
func PlacesBeginAgain(rows []table.Row, things, i int) bool {
	if !StartsFilled(rows, things) || !PlacesWithin(rows, things, i) {
		return false
	}
	thing, first, n, again := "", "", 0, 0
	for _, r := range rows {
		if shape.IsText(r) || !holds(r, i) {
			continue
		}
		if !holds(r, things) || table.Fold(r.Cells[things]) == thing {
			continue
		}
		thing = table.Fold(r.Cells[things])
		if n++; n == 1 {
			first = r.Cells[i]
		} else if r.Cells[i] == first {
			again++
		}
	}
	return n > 1 && 2*again >= n-1
}
