package row

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// isFreePlace reports whether a row of a list of both ends says but one place of a device, and a number of its own at most, where other
// rows have a wire in other places of that device: it is a place that is free.
//
//	No | Circuit | From    | To   | Colour
//	8  | Horn    | Panel 8 | Horn | red
//	9  |         | Panel 9 |      |
func isFreePlace(b *shape.Block, froms, tos []draft.End, it *draft.Item) bool {
	own := *it
	own.OwnID = ""
	if it.State != name.Used || len(froms)+len(tos) != 1 || !b.Has(name.FieldFrom) || !b.Has(name.FieldTo) || !saysNothing(&own) {
		return false
	}
	e := append(froms, tos...)[0]
	device, pin := e.Text, e.Pin
	if at := strings.LastIndexByte(device, ' '); pin == "" && at > 0 {
		device, pin = device[:at], device[at+1:]
	}
	if !name.IsCavity(pin) {
		return false
	}
	others := 0
	for _, r := range b.Rows[:min(len(b.Rows), column.MostLooked)] {
		if n, _ := r.Filled(); n < 4 || shape.IsText(r) {
			continue
		}
		for _, f := range []name.Field{name.FieldFrom, name.FieldTo} {
			if cell := table.Fold(b.Cell(r.Cells, f)); strings.HasPrefix(cell, table.Fold(device)) && cell != table.Fold(e.Text) {
				others++
			}
		}
	}
	return others > 1
}
