package settle

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// deviceOfPins takes the devices to the right of the cavities for where the wires go, where a title names the connector, its
// cavities go on from one device to the next, and some device has several of them.
//
//	# Dome drive, socket SK2
//	Pins | Signal | Device
//	3    | Home   | Switch
//	4    | Return | Switch
//	5    | Enable | Drive
func (l *Look) deviceOfPins() {
	pin, device := l.Holds(l.Cols, name.FieldPin), l.Holds(l.Cols, name.FieldConnector)
	if pin < 0 || device < pin || l.Titled() == "" || l.Cols[device].Given || l.Prof[device].Distinct == l.Prof[device].Filled ||
		l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun) {
		return
	}
	w := name.Words(table.Fold(l.Cols[device].Head))
	if len(w) == 0 || !name.IsDeviceWord(w[len(w)-1]) || !l.Prof[pin].Unique() || l.Prof[pin].Filled < 3 {
		return
	}
	if column.FirstAgain(l.Src.Rows, device, pin) < 2 {
		l.Cols[device].Field = name.FieldTo
	}
}
