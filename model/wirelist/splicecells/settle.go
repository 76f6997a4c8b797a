package splicecells

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Settle takes the column of splices of a table of cavities or near ends for the far ends, where no other column says any, and that
// of a table of far ends for the near ones.
//
//	Connector | Pin | Signal | Splice        Wire | Splice | To  | Pin
//	HELM      | 1   | feed   | SP1           301  | SP1    | TPS | 1
func Settle(cols []shape.Column, rows []table.Row) {
	b := shape.Block{Cols: cols}
	if b.Has(name.FieldRun, name.FieldVia, name.FieldDevicePin) {
		return
	}
	as, from := name.FieldTo, b.Has(name.FieldFrom, name.FieldFromPin)
	switch to := b.Has(name.FieldTo, name.FieldToPin); {
	case to && !from && onlyFar(cols):
		as = name.FieldFrom
	case to, !from && !b.Has(name.FieldPin):
		return
	}
	at := slices.IndexFunc(cols, func(c shape.Column) bool {
		is, _ := heads(c.Head)
		return is && c.Field == name.FieldKeep && !c.Given
	})
	if at >= 0 && areSplices(rows, at, cols[at].Head, from) && (as == name.FieldTo || everyRow(rows, at)) {
		for i := range cols {
			if as == name.FieldFrom && cols[i].Field == name.FieldPin {
				cols[i].Field = name.FieldToPin
			}
		}
		cols[at].Field = as
		cols[at].Know()
	}
}

// onlyFar reports whether the only cavities of a table stand right behind its far ends, or it has none.
func onlyFar(cols []shape.Column) bool {
	for i, c := range cols {
		if c.Field == name.FieldPin && (i == 0 || cols[i-1].Field != name.FieldTo) {
			return false
		}
	}
	return true
}

// everyRow reports whether every row has something in a column: a splice that stands in the first row of its wires alone is of how many,
// nobody knows.
func everyRow(rows []table.Row, at int) bool {
	return !slices.ContainsFunc(rows, func(r table.Row) bool {
		return !shape.IsText(r) && (at >= len(r.Cells) || value.IsNothing(r.Cells[at]))
	})
}
