package bothends

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// ApartEnds leaves a second column of the same end unread where other things of the wire stand between the two and both are filled: a
// device and its plug stand beside each other, and are one end together.
//
//	From | To     | Pin | Colour | Fuse | Feeds
//	P2   | LH rear| 1   | red    | F1   | side lamps
func ApartEnds(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	for _, f := range []name.Field{name.FieldFrom, name.FieldTo} {
		first := slices.IndexFunc(cols, func(c shape.Column) bool { return c.Field == f && !c.Group })
		if first < 0 {
			continue
		}
		between := false
		for i := first + 1; i < len(cols); i++ {
			c := &cols[i]
			if c.Field != f {
				between = between || c.Field != f+" pin" && c.Field != name.FieldPin && i < len(prof) && prof[i].Filled > 0
				continue
			}
			if between && !c.Given && !c.Group && fillsBoth(rows, first, i) {
				c.Field, c.Spared = name.FieldKeep, true
			}
		}
	}
}

// fillsBoth reports whether a row has something else in the second of two columns than in the first, and none has the second alone.
func fillsBoth(rows []table.Row, first, second int) bool {
	both := false
	for _, r := range rows {
		if second >= len(r.Cells) || value.IsNothing(r.Cells[second]) || shape.IsText(r) {
			continue
		}
		if value.IsNothing(r.Cells[first]) {
			return false
		}
		both = both || table.Fold(r.Cells[first]) != table.Fold(r.Cells[second])
	}
	return both
}
