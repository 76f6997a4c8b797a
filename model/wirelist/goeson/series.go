package goeson

import (
	"strings"

	"contralay/model/wirelist/table"
)

// Series reports whether a row goes on with a series of the rows above it, whatever words stand beside it: no headings do.
//
//	Output | Signal
//	OUT3   | Fan feed
//	OUT4   | Water pump out
func Series(above []table.Row, r table.Row) bool {
	const back = 3 // rows above that are looked at (no source)
	for _, a := range above[max(0, len(above)-back):] {
		for k, c := range r.Cells {
			if s := stem(c); s != c && k < len(a.Cells) && a.Cells[k] != c && a.Cells[k] != s && stem(a.Cells[k]) == s {
				return true
			}
		}
	}
	return false
}

// stem is a text without the number that ends it.
func stem(s string) string { return strings.TrimRight(s, "0123456789") }
