package block

import (
	"slices"

	"contralay/model/wirelist/table"
)

// isCaption reports whether what was taken for a table of its own is the caption of the one whose headings follow: nobody
// knows its headings, and it has no row, or two cells in each.
//
//	Connector | P3
//	Location  | behind the seat
//
//	Pin | Circuit | Colour
func (f *finder) isCaption(head table.Row) bool {
	c := f.current
	if c == nil || len(c.Head) != 1 || f.t.Marked || !f.h.IsHead(head) && !f.isWords(head) || f.h.IsHead(c.Head[0]) || len(c.Rows) > 4 {
		return false
	}
	if len(c.Rows) == 0 {
		return true
	}
	return f.h.IsHead(head) && !slices.ContainsFunc(append(c.Rows, c.Head[0]), func(r table.Row) bool {
		n, _ := r.Filled()
		return n > 2
	})
}
