package reading

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// places reads two columns that nobody knows beside the colours or the sizes of wires: the pads of the device that heads the
// first, and what each is taken to. Nothing but the cells says so, and a person should look.
//
//	Controller | Wire  | Strip / parts
//	D4         | green | LED strip DIN
//	5V         | red   | LED strip 5V
func places(l *look) []shape.Column {
	value := l.holds(l.cols, name.FieldColour, name.FieldGauge)
	if value < 0 || len(l.src.Head) == 0 || l.has(l.cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun,
		name.FieldPin, name.FieldWire, name.FieldNumber, name.FieldSignal, name.FieldCable) {
		return nil
	}
	var of []int
	for i, c := range l.cols {
		w := name.Words(table.Fold(c.Head))
		if (c.Field == name.FieldKeep || c.Field == name.FieldConnector) && l.prof[i].Filled > 0 && !c.Given && len(w) > 0 {
			if name.IsRemark(w) || name.IsMeasure(w) || l.prof[i].Filled < 2 {
				return nil
			}
			of = append(of, i)
		}
	}
	if len(of) != 2 || !l.prof[of[0]].Unique() || l.prof[of[0]].Prose > 0 || !l.headsDevice(of[0]) {
		return nil
	}
	cols := slices.Clone(l.cols)
	cols[of[0]].Field, cols[of[0]].Of = name.FieldPin, shape.DeviceOf(cols[of[0]].Head)
	cols[of[1]].Field = name.FieldTo
	for k := range of {
		cols[of[k]].Guessed = true
	}
	return cols
}

// headsDevice reports whether the heading of a column is a device.
func (l *look) headsDevice(i int) bool {
	for _, w := range name.Words(table.Fold(l.cols[i].Head)) {
		if name.IsDeviceWord(w) || name.IsUnit(w) || l.h.Words[w].Field == name.FieldConnector {
			return true
		}
	}
	return false
}
