package settle

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// deviceBeforePin takes a column headed by a word for devices, right before the cavities, for the connectors: devices come again, none has
// one of its cavities twice, and the cavities begin anew at some device, or no title names a connector that they could be of.
//
//	Sensor | Pin | Function
//	Flow   | 1   | supply
//	Flow   | 2   | pulse
//	Lid    | 1   | switch
func (l endColumns) deviceBeforePin() {
	if l.Has(l.Cols, name.FieldConnector, name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldVia) {
		return
	}
	pin := l.Holds(l.Cols, name.FieldPin)
	if pin < 1 || l.Cols[pin].Of != "" || !l.isDeviceHead(pin-1) || l.Prof[pin].Unique() && l.Titled() != "" {
		return
	}
	if p := &l.Prof[pin-1]; p.Distinct > 1 && p.Distinct < p.Filled && p.Prose == 0 && !p.Most(p.Numbers) &&
		column.PairsOnce(l.Src.Rows, pin-1, pin) {
		l.Cols[pin-1].Field = name.FieldConnector
	}
}

// isDeviceHead reports whether the heading of a column that nobody knows is one word for devices.
func (l endColumns) isDeviceHead(i int) bool {
	c := &l.Cols[i]
	w := name.Words(table.Fold(c.Head))
	return !c.Given && c.Field == name.FieldKeep && len(w) == 1 && (name.IsDeviceWord(w[0]) || name.IsUnit(w[0]))
}
