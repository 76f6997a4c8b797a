package bothends

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// OwnPins takes cavities behind a far end for those of the table itself, where the cells of the far end name its cavities
// already and the table has no others.
//
//	Use  | Colour | To                   | Pin
//	Wake | pink   | Charger pin 3        | F
func OwnPins(cols []shape.Column, prof []column.Profile) {
	holds := func(fields ...name.Field) int {
		for i, c := range cols {
			if i < len(prof) && prof[i].Filled > 0 && slices.Contains(fields, c.Field) {
				return i
			}
		}
		return -1
	}
	to, pin := holds(name.FieldTo), holds(name.FieldToPin)
	if to < 0 || pin < 0 || cols[pin].Given || cols[pin].Of != "" || holds(name.FieldPin, name.FieldFrom, name.FieldFromPin) >= 0 ||
		!prof[to].Most(prof[to].Ends) || !prof[pin].Unique() {
		return
	}
	cols[pin].Field = name.FieldPin
}
