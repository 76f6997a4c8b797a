package reading

import "contralay/model/wirelist/name"

// saysWherePins reports whether a column below "Where" is of the far ends of wires: the table has their cavities, their names, their
// colours or sizes, and no other column for the far end. Below the same heading a list of parts says where they are bought.
//
//	# | Signal | Wire      | Where
//	1 | VBAT   | 16 AWG red | main switch
func (l *look) saysWherePins(i int) bool {
	p := &l.prof[i]
	return l.holds(l.cols, name.FieldPin, name.FieldNumber) >= 0 && l.holds(l.cols, name.FieldSignal) >= 0 &&
		l.holds(l.cols, name.FieldColour, name.FieldGauge) >= 0 && !l.has(l.cols, name.FieldTo, name.FieldToPin, name.FieldFrom) &&
		4*p.Prose <= p.Filled
}
