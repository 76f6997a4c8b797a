package column

import (
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// AreNamesAndFar reports whether most cells of a column are the name of a wire, without a digit, and where it goes: the digits of such a
// cell are those of its far end.
//
//	1 | red   | 18 | ignition feed, to fuse box F7
//	2 | black | 18 | earth, to stud E2
func AreNamesAndFar(rows []table.Row, i int) bool {
	n, filled := 0, 0
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		filled++
		if called, _, ok := shape.CutFar(r.Cells[i]); ok && !value.HasDigit(called) {
			n++
		}
	}
	return n > 1 && 2*n >= filled
}
