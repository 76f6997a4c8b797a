package reading

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// chain reads three connectors with a cavity each in a row: the wire goes from the first through the second to the third.
//
//	Conn | Pin | Conn | Pin | Conn | Pin | Function
//	XR1  | 1   | XB1  | A   | XP1  | 3   | Heater
func chain(l *look) []shape.Column {
	var pins []int
	for i, c := range l.Cols {
		isPin := c.Field == name.FieldPin || c.Field == name.FieldFromPin || c.Field == name.FieldToPin
		if isPin && !c.Given {
			pins = append(pins, i)
		}
	}
	if len(pins) != 3 || pins[0] == 0 || pins[1] != pins[0]+2 || pins[2] != pins[1]+2 {
		return nil
	}
	head := table.Fold(l.Cols[pins[0]-1].Head)
	for k, i := range pins {
		c, before := &l.Cols[i], &l.Cols[i-1]
		if l.Prof[i].Filled == 0 || l.Prof[i-1].Filled == 0 || !l.Prof[i].Most(l.ShortNames(i)) || before.Given ||
			table.Fold(c.Head) != table.Fold(l.Cols[pins[0]].Head) {
			return nil
		}
		switch f := before.Field; {
		case table.Fold(before.Head) == head:
		case k == 0 && f == name.FieldFrom, k == 1 && (f == name.FieldKeep || f == name.FieldConnector), k == 2 && f == name.FieldTo:
		default:
			return nil
		}
	}
	cols := slices.Clone(l.Cols)
	for k, f := range [][2]name.Field{{name.FieldFrom, name.FieldFromPin}, {name.FieldConnector, name.FieldVia},
		{name.FieldTo, name.FieldToPin}} {
		cols[pins[k]-1].Field, cols[pins[k]].Field = f[0], f[1]
	}
	return cols
}
