package settle

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// farPlaces reports whether a column whose heading nobody knows is where the wires of some cavities go, by its cells alone: places
// of a few devices, beside the cavities and their names. A person should look.
//
//	Pin | Circuit | Finishes
//	1   | Earth   | Box 1
//	2   | Tail    | Box 2
func (l *Look) farPlaces(i int) bool {
	c := &l.Cols[i]
	w := name.Words(table.Fold(c.Head))
	signal := l.Holds(l.Cols, name.FieldSignal, name.FieldWire)
	if c.Known() || len(w) == 0 || signal < 0 || !l.Cols[signal].Known() || !l.AnotherPin(i) || l.another(i, name.FieldTo) ||
		l.another(i, name.FieldFrom) || l.another(i, name.FieldFromPin) || l.another(i, name.FieldToPin) ||
		name.IsRemark(w) || name.IsMeasure(w) || name.IsOtherHead(c.Head) {
		return false
	}
	return column.ArePlaces(l.Src.Rows, i)
}
