package settle

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// farBoardOfDevices takes a column behind devices and their cavities for the far cavities of the one device that heads it, without a
// column of names: its cells are numbered pads, some of them supplies, and no names of nets.
//
//	Module | Module pin | Feather | Wire
//	Baro   | SDA        | D20     | green
//	       | GND        | GND     | black
func (l endColumns) farBoardOfDevices() {
	near := slices.IndexFunc(l.Cols, func(c shape.Column) bool { return c.Field == name.FieldPin })
	for i := 1; i < len(l.Cols) && near < 0; i++ {
		if c := &l.Cols[i]; c.Field == name.FieldKeep && !c.Given && l.EndsInPin(c.Head) &&
			strings.HasPrefix(table.Fold(c.Head), table.Fold(l.Cols[i-1].Head)+" ") {
			near = i
		}
	}
	if near < 1 {
		return
	}
	of := near - 1
	if l.Prof[near].Filled < 3 || l.Prof[of].Filled == 0 || l.Cols[of].Given ||
		l.Cols[of].Field != name.FieldConnector && !l.isEndDevice(of) {
		return
	}
	for i := near + 1; i < len(l.Cols); i++ {
		if l.isFarBoard(i) && arrow.NumberedPads(l.Src.Rows, i) {
			l.Cols[of].Field, l.Cols[near].Field = name.FieldConnector, name.FieldPin
			l.Cols[i].Field, l.Cols[i].Of = name.FieldToPin, shape.DeviceOf(l.Cols[i].Head)
			return
		}
	}
}
