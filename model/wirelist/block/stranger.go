package block

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// isStranger reports whether behind a gap in a table of cavities a row of words begins another table: neither in it nor in any
// row below, up to the next gap, does a cavity stand where the table has its cavities.
//
//	Pin  | Function
//	1    | Up
//
//	Stop | Hue
//	Reed | red
func (f *finder) isStranger(i int) bool {
	rows, c := f.t.Rows, f.current
	if c == nil || f.t.Marked || len(c.Head) == 0 || len(c.Rows) == 0 || i == 0 || i+1 >= len(rows) || rows[i].Line == rows[i-1].Line+1 ||
		!f.isWords(rows[i]) {
		return false
	}
	pin := f.h.PinColumn(c.Head[len(c.Head)-1])
	if pin < 0 {
		return false
	}
	n := 0
	for k := i; k < len(rows) && (k == i || rows[k].Line == rows[k-1].Line+1); k++ {
		if pin >= len(rows[k].Cells) || shape.IsText(rows[k]) {
			return false
		}
		cell := rows[k].Cells[pin]
		if name.IsCavity(cell) || len(cell) < 4 || strings.ContainsAny(cell, "0123456789") {
			return false
		}
		n++
	}
	return n > 1
}
