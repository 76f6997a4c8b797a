package settle

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// loadDevices takes a column of devices behind the cavities for the far ends, where the title names what the cavities are of: they go
// on counting from one device to the next.
//
//	Plug X3
//	# | Signal  | Colour | Device
//	1 | crank + | red    | Crank sensor
//	2 | crank - | blue   | Crank sensor
//	3 | cam +   | green  | Cam sensor
func (l endColumns) loadDevices() {
	pin, device := l.Holds(l.Cols, name.FieldPin), column.OfDevices(l.Cols)
	if pin < 0 {
		pin = l.Holds(l.Cols, name.FieldNumber)
	}
	if pin < 0 || device < pin+2 || l.Cols[device].Given || l.Cols[pin].Of != "" || l.Titled() == "" || l.AnotherPin(pin) ||
		l.Has(l.Cols, name.FieldFrom, name.FieldFromPin, name.FieldTo, name.FieldToPin, name.FieldRun, name.FieldVia) {
		return
	}
	w := name.Words(table.Fold(l.Cols[device].Head))
	if p := &l.Prof[pin]; len(w) == 1 && name.IsDeviceWord(w[0]) && p.Unique() && p.All(p.Cavities) && p.Filled > 2 &&
		l.Prof[device].Distinct > 1 {
		l.Cols[device].Field, l.Cols[pin].Field = name.FieldTo, name.FieldPin
	}
}
