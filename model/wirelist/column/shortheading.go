package column

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
)

// IsShortHeading reports whether a row of one short word alone heads the rows below it, and is no end, no cavity and no wire: nothing
// else in the table is called so, each row below names its own, and cavities and wires beside it have numbers.
//
//	From | Pin | To       | Pin | Signal
//	CAN  |     |          |     |
//	VCU  | 1   | Inverter | 7   | CAN_H
func IsShortHeading(b *shape.Block, at int) bool {
	r := b.Rows[at]
	n, word := r.Filled()
	i := slices.Index(r.Cells, word)
	if n != 1 || i >= len(b.Cols) || r.Prose || at+1 >= len(b.Rows) || len(word) < 2 ||
		strings.ContainsFunc(word, func(r rune) bool { return !unicode.IsLetter(r) && r != ' ' && r != '&' && r != '/' }) {
		return false
	}
	ends := false
	switch b.Cols[i].Field {
	case name.FieldFrom:
		ends = true
		if !b.Has(name.FieldTo) {
			return false
		}
	case name.FieldPin, name.FieldWire, name.FieldNumber:
	default:
		return false
	}
	digits, rows := 0, 0
	for k, o := range b.Rows[:min(len(b.Rows), MostLooked)] {
		if slices.ContainsFunc(o.Cells, func(c string) bool { return k != at && strings.EqualFold(c, word) }) {
			return false
		}
		if filled, first := o.Filled(); filled < 2 || signoff.IsTotal(first) {
			continue
		}
		if k == at+1 && (i >= len(o.Cells) || o.Cells[i] == "") {
			return false // what stands alone is of the rows below
		}
		if rows++; i < len(o.Cells) && strings.ContainsAny(o.Cells[i], "0123456789") {
			digits++
		}
	}
	return rows > 1 && (ends || digits == rows)
}
