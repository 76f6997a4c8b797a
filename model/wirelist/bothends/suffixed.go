package bothends

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
)

// SuffixedSides takes two columns of things, each right before the cavities of its side, for the near and the far devices, whatever word
// heads them: the two headings are one word with A and B behind it, or 1 and 2, as those of the cavities are.
//
//	Node A | Pin A | Node B | Pin B | Net
//	MCU    | 4     | BMS    | 3     | TX
func SuffixedSides(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	l, from, to := look{cols, prof, rows}, -1, -1
	for i, c := range cols {
		switch c.Field {
		case name.FieldFrom, name.FieldTo, name.FieldConnector, name.FieldRun, name.FieldVia, name.FieldDevicePin:
			if prof[i].Filled > 0 {
				return
			}
		case name.FieldFromPin:
			from = i
		case name.FieldToPin:
			to = i
		}
	}
	if from < 1 || to < 1 || from == to || cols[from].Of != "" || cols[to].Of != "" {
		return
	}
	near, far := from-1, to-1
	stem, a := suffixOf(cols[near].Head)
	other, b := suffixOf(cols[far].Head)
	if stem == "" || stem != other || a+b != "ab" && a+b != "12" || sidehead.IsFitting(stem) || name.IsMeasure([]string{stem}) {
		return
	}
	for _, i := range []int{near, far} {
		if cols[i].Given || cols[i].Field != name.FieldKeep && cols[i].Field != name.FieldWire && cols[i].Field != name.FieldNumber ||
			!l.areThings(i) {
			return
		}
	}
	cols[near].Field, cols[far].Field = name.FieldFrom, name.FieldTo
	cols[near].Know()
	cols[far].Know()
}

// suffixOf parts the folded last word off a heading; both "" where it has one word.
func suffixOf(head string) (stem, last string) {
	w := name.Words(table.Fold(head))
	if len(w) < 2 {
		return "", ""
	}
	return strings.Join(w[:len(w)-1], " "), w[len(w)-1]
}
