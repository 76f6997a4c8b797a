package goeson

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Series reports whether a row goes on with the rows beside it, whatever words stand in it: with a series of theirs, or with a word that
// they have in the same column. No headings do.
//
//	Output | Signal
//	OUT3   | Fan feed
//	OUT4   | Water pump out
func Series(above, below []table.Row, r table.Row) bool {
	const back = 3 // rows above that are looked at (no source)
	for _, a := range slices.Concat(above[max(0, len(above)-back):], below[:min(1, len(below))]) {
		for k, c := range r.Cells {
			if k >= len(a.Cells) || c == "" || a.Cells[k] == "" {
				continue
			}
			o := a.Cells[k]
			if c == o && len(c) > 1 || c != o && stem(c) == stem(o) && stem(c) != c && stem(o) != o || isPlace(c) && isPlace(o) ||
				isEnd(c) && isEnd(o) {
				return true
			}
		}
	}
	return false
}

// stem is a text without the number that ends it, and without a bracket behind that.
func stem(s string) string { return strings.TrimRight(s, "0123456789)") }

// isPlace reports whether a cell is a letter, or one and a number, "B12".
func isPlace(s string) bool {
	return s != "" && len(s) < 4 && s[0] >= 'A' && s[0] <= 'Z' && strings.Trim(s[1:], "0123456789") == ""
}

// isEnd reports whether a cell is a connector and its cavity, "WCU:3", "Dash pin J".
func isEnd(s string) bool { return name.IsEnd(s) || name.SaysPin(s) }

// WithoutTitle takes a short name alone in its row, right above headings that come again, off the rows of the table in hand: it is the
// title of the next table. titles are the texts that stand behind the rows already.
//
//	X1
//	Pin | Function
//	1   | feed
//	X2
//	Pin | Function
func WithoutTitle(rows, titles []table.Row) (left, all []table.Row) {
	if n := len(rows); n > 1 && len(titles) == 0 {
		filled, text := rows[n-1].Filled()
		if above, _ := rows[n-2].Filled(); filled == 1 && above > 1 && rows[n-1].Cells[0] == text && !isNumber(text) {
			return rows[:n-1], rows[n-1:]
		}
	}
	return rows, titles
}

func isNumber(s string) bool { return strings.Trim(s, "0123456789") == "" }

// StartsWithPins reports whether headings begin with one of cavities, "Position", and no other says where wires start.
func StartsWithPins(h shape.Headings, r table.Row) bool {
	return len(r.Cells) > 0 && h.IsPinHeading(r.Cells[0]) && !h.SaysNear(r)
}
