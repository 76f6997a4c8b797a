package reading

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
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
	value := l.Holds(l.Cols, name.FieldColour, name.FieldGauge)
	if value < 0 || len(l.Src.Head) == 0 || l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun,
		name.FieldPin, name.FieldWire, name.FieldNumber, name.FieldSignal, name.FieldCable) {
		return nil
	}
	var of []int
	for i, c := range l.Cols {
		w := name.Words(table.Fold(c.Head))
		if (c.Field == name.FieldKeep || c.Field == name.FieldConnector) && l.Prof[i].Filled > 0 && !c.Given && len(w) > 0 {
			if name.IsRemark(w) || name.IsMeasure(w) || l.Prof[i].Filled < 2 {
				return nil
			}
			of = append(of, i)
		}
	}
	if len(of) != 2 || !l.Prof[of[0]].Unique() || l.Prof[of[0]].Prose > 0 || !l.HeadsDevice(of[0]) ||
		pads.OfTwo(l.Src.Rows, of[0], of[1]) || l.EndsInPin(l.Cols[of[1]].Head) { // the second are pads or cavities, too, and no devices
		return nil
	}
	cols := slices.Clone(l.Cols)
	cols[of[0]].Field, cols[of[0]].Of = name.FieldPin, shape.DeviceOf(cols[of[0]].Head)
	cols[of[1]].Field = name.FieldTo
	for k := range of {
		cols[of[k]].Guessed = true
	}
	return cols
}
