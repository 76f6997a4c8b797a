package block

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
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
	if _, first := rows[i].Filled(); name.OtherKind(table.Fold(first)) != "" && f.narrows(i) {
		return true
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

// narrows reports whether the rows from one on, up to the next gap, fill half of the columns or less that the table in hand has.
//
//	Wire  | From  | To | mm² | Colour
//	1     | Panel | Lamp | 1 | red
//
//	Fuse  | Feeds
//	F1    | lamps
func (f *finder) narrows(i int) bool {
	wide, narrow := 0, 0
	for _, c := range f.current.Head[len(f.current.Head)-1].Cells {
		if c != "" {
			wide++
		}
	}
	for k := i; k < len(f.t.Rows) && (k == i || f.t.Rows[k].Line == f.t.Rows[k-1].Line+1); k++ {
		n, _ := f.t.Rows[k].Filled()
		narrow = max(narrow, n)
	}
	return 2*narrow <= wide
}
