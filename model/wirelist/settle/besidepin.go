package settle

import "contralay/model/wirelist/name"

// besidePin parts two columns of connectors: the one right beside the only column of cavities has these cavities, and the
// other, which stands apart from both, is where the wire goes.
//
//	Device     | Line | Colour | Board       | Pin
//	Left motor | PWM  | white  | Drive board | 3
func (l endColumns) besidePin() {
	if l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun) {
		return
	}
	pin, beside, apart := -1, -1, -1
	for i, c := range l.Cols {
		switch {
		case c.Given || l.Prof[i].Filled == 0:
		case c.Field == name.FieldPin && pin >= 0:
			return
		case c.Field == name.FieldPin:
			pin = i
		}
	}
	for i, c := range l.Cols {
		if pin < 0 || c.Given || c.Field != name.FieldConnector || l.Prof[i].Filled == 0 {
			continue
		}
		switch {
		case (i == pin-1 || i == pin+1) && beside < 0:
			beside = i
		case apart < 0:
			apart = i
		default:
			return
		}
	}
	if beside < 0 || apart < 0 || apart-beside == 1 || beside-apart == 1 || apart-pin == 1 || pin-apart == 1 || l.Prof[apart].Numbers > 0 {
		return
	}
	l.Cols[beside].Field, l.Cols[pin].Field, l.Cols[apart].Field = name.FieldFrom, name.FieldFromPin, name.FieldTo
}
