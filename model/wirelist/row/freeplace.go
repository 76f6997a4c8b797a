package row

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
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
	return column.HasOtherPlaces(b, e.Text, e.Pin)
}
