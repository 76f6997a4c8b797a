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
	to, pin := l.holds(cols, name.FieldTo), l.holds(cols, name.FieldToPin)
	if to < 0 || pin < 0 || cols[pin].Given || cols[pin].Of != "" || l.has(cols, name.FieldPin, name.FieldFrom, name.FieldFromPin) ||
		!l.prof[to].Most(l.prof[to].Ends) || !l.prof[pin].Unique() {
		return
	}
	cols[pin].Field = name.FieldPin
}
