package column

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// MayBeEmpty reports whether a cell of a row says something only of some wires: which is its pair, its fuse, a remark; and the cavity of a
// thing that has one end alone, a stud or a splice.
func MayBeEmpty(cols []shape.Column, r table.Row, i int) bool {
	if i >= len(cols) {
		return false
	}
	switch cols[i].Field {
	case name.FieldCable, name.FieldFuse, name.FieldNote, name.FieldConnector: // a connector may be written once for its rows
		return true
	case name.FieldFromPin, name.FieldToPin:
		return i > 0 && cols[i-1].Field+" pin" == cols[i].Field && i-1 < len(r.Cells) && r.Cells[i-1] != ""
	}
	return false
}

// IsAtEnd reports whether a heading is of what is put on the wires, or of the work on them: neither is an end, a size or a colour.
func IsAtEnd(head string, w []string) bool {
	return sidehead.IsFitting(table.Fold(head)) || words.SaysWork(w)
}
