package reading

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// ownPins takes cavities behind a far end for those of the table itself, where the cells of the far end name its cavities
// already and the table has no others.
//
//	Use  | Colour | To                   | Pin
//	Wake | pink   | Charger pin 3        | F
func (l *look) ownPins(cols []shape.Column) {
	to, pin := l.Holds(cols, name.FieldTo), l.Holds(cols, name.FieldToPin)
	if to < 0 || pin < 0 || cols[pin].Given || cols[pin].Of != "" || l.Has(cols, name.FieldPin, name.FieldFrom, name.FieldFromPin) ||
		!l.Prof[to].Most(l.Prof[to].Ends) || !l.Prof[pin].Unique() {
		return
	}
	cols[pin].Field = name.FieldPin
}
