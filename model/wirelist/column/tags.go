package column

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// TagsRows reports whether a column below a heading for labels numbers the wires: its cells are a series, no other column has ids, and
// both ends of each wire stand beside it.
//
//	Tag | Strip | Term | Goes to
//	R1  | TB1   | 1    | Drum motor
func TagsRows(cols []shape.Column, rows []table.Row, i int) bool {
	has := func(f name.Field) bool {
		return slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Field == f })
	}
	far := has(name.FieldTo) || has(name.FieldToPin)
	near := has(name.FieldFrom) || has(name.FieldFromPin) || has(name.FieldConnector) && has(name.FieldPin)
	return far && near && !has(name.FieldWire) && AreSeries(rows, i)
}
