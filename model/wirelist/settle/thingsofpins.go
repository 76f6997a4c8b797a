package settle

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// thingsOfPins takes the column right before the cavities for their connectors where the cavities begin again with each of its cells:
// whatever is counted so, a cable or a lead, ends in a plug of that name.
//
//	Multi | Pin | Use
//	BAR 1 | 1   | live
//	      | 2   | neutral
//	BAR 2 | 1   | live
func (l endColumns) thingsOfPins() {
	pin := l.Holds(l.Cols, name.FieldPin)
	if pin < 1 || l.Cols[pin].Of != "" || l.Has(l.Cols, name.FieldConnector, name.FieldFrom, name.FieldFromPin, name.FieldRun,
		name.FieldVia, name.FieldDevicePin) {
		return
	}
	c, p := &l.Cols[pin-1], &l.Prof[pin-1]
	w := name.Words(table.Fold(c.Head))
	switch c.Field {
	case name.FieldKeep:
		if name.IsRemark(w) || name.IsMeasure(w) || name.IsOtherHead(c.Head) {
			return
		}
	case name.FieldCable, name.FieldWire:
	default:
		return
	}
	if c.Given || len(w) == 0 || p.Prose > 0 || p.Colours+p.Sized > 0 || p.Most(p.Numbers) ||
		!column.PlacesBeginAgain(l.Src.Rows, pin-1, pin) {
		return
	}
	c.Field = name.FieldConnector
	for i := range l.Cols { // they begin again, too
		if core := &l.Cols[i]; core.Field == name.FieldWire && !core.Given && l.countsCores(i) {
			core.Field = name.FieldKeep
		}
	}
}
