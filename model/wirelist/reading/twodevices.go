package reading

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// twoDevices reads two columns that nobody knows, each headed by a device, whose cells are the pads of boards: from the one to the
// other. Nothing but the cells says so, and a person should look.
//
//	Barometer | Hub
//	VIN       | 3V3
//	SCK       | D13
func twoDevices(l *look) []shape.Column {
	if len(l.Src.Head) != 1 || l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun,
		name.FieldWire, name.FieldNumber, name.FieldCable, name.FieldDevicePin) {
		return nil
	}
	var of []int
	for i, c := range l.Cols {
		headed := c.Field == name.FieldPin && c.Of == c.Head // "Board" over cavities
		named := c.Field == name.FieldSignal && !c.Known()
		if l.Prof[i].Filled == 0 || c.Field != name.FieldKeep && c.Field != name.FieldConnector && !headed && !named {
			if c.Field == name.FieldPin {
				return nil
			}
			continue
		}
		w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
		if c.Given || len(w) == 0 || len(w) > 4 || name.IsRemark(w) && len(w) == 1 || name.IsOtherHead(c.Head) {
			if len(w) > 0 && name.IsRemark(w) {
				continue // remarks stand beside
			}
			return nil
		}
		of = append(of, i)
	}
	if len(of) != 2 || !l.Prof[of[0]].Unique() && !l.Prof[of[1]].Unique() || !pads.OfTwo(l.Src.Rows, of[0], of[1]) {
		return nil
	}
	cols := append([]shape.Column(nil), l.Cols...)
	for k, f := range []name.Field{name.FieldFromPin, name.FieldToPin} {
		cols[of[k]].Field, cols[of[k]].Of, cols[of[k]].Slashed = f, cols[of[k]].Head, pads.StrokeNames(l.Src.Rows, of[k])
	}
	return cols
}
