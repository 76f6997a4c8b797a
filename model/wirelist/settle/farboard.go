package settle

import (
	"slices"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// farBoard takes a column for the far cavities of the one device that heads it where its cells are marks of pads, and the cavities of the
// near end and the names of the nets stand in columns of their own. Pads of supply and ground come again, one for several wires.
//
//	Sensor | Terminal | Signal | Board      Pin | Name  | Keeper
//	Vane   | 1        | wiper  | A0         1   | 12V   | V+
//	       | 2        | ground | GND        2   | latch | OUT1
func (l endColumns) farBoard() {
	if l.Has(l.Cols, name.FieldFrom, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldVia, name.FieldDevicePin) {
		return
	}
	signal, near := l.Holds(l.Cols, name.FieldSignal), -1
	for i, c := range l.Cols {
		w := name.Words(table.Fold(c.Head))
		if near < 0 && l.Prof[i].Filled > 1 && len(w) > 0 && (c.Field == name.FieldPin || c.Field == name.FieldNumber && l.Titled() != "" &&
			column.CountsUp(l.Src.Rows, i) || c.Field == name.FieldContact && l.Heads.Words[w[len(w)-1]].Field == name.FieldPin) {
			near = i
		}
	}
	if signal < 0 {
		l.farBoardOfDevices()
	}
	if signal < 0 || near < 0 || !l.Cols[signal].Known() || column.TellFunctions(l.Cols) {
		return
	}
	for i := range l.Cols {
		if i > near && i != signal && l.isFarBoard(i) {
			l.Cols[i].Field, l.Cols[i].Of = name.FieldToPin, shape.DeviceOf(l.Cols[i].Head)
			if l.Cols[near].Field == name.FieldNumber {
				l.Cols[near].Field = name.FieldPin
			}
			return
		}
	}
}

// isFarBoard reports whether a column is headed by something that no other column of wires is, and holds marks of pads.
func (l endColumns) isFarBoard(i int) bool {
	c := &l.Cols[i]
	w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
	if c.Given || len(w) == 0 || len(w) > 3 || c.Field != name.FieldKeep && c.Field != name.FieldConnector || name.IsRemark(w) ||
		name.IsMeasure(w) || name.IsOtherHead(c.Head) || l.EndsInPin(c.Head) {
		return false
	}
	return arrow.FarPads(l.Src.Rows, i) && !slices.Contains([]string{"net", "signal", "function", "name"}, w[len(w)-1])
}
