package settle

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// plugNumbers takes a column of numbers, which beside a far end would be those of the wires, for the cavities of the plug that the
// title names. Many makers of plugs call a cavity a circuit.
//
//	Plug X3 (12 way)                              Engine plug X3
//	No. | Signal  | Colour | To                   Circuit # | Function | Gauge
//	A1  | crank + | red    | Crank sensor         1         | Fan feed | 12
func (l endColumns) plugNumbers() {
	if l.AnotherPin(-1) || l.Has(l.Cols, name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldVia,
		name.FieldConnector, name.FieldDevicePin) {
		return
	}
	number := slices.IndexFunc(l.Cols, func(c shape.Column) bool {
		return (c.Field == name.FieldNumber || c.Field == name.FieldWire || c.Field == name.FieldIgnore && c.Running) && !c.Given &&
			(shape.IsCircuit(c.Head) || l.Has(l.Cols, name.FieldTo) &&
				l.Heads.Words[strings.Join(name.Words(table.Fold(c.Head)), " ")].Field == name.FieldNumber)
	})
	if number < 0 {
		return
	}
	if p := &l.Prof[number]; p.Unique() && p.All(p.Cavities) && p.Filled > 1 && (l.Has(l.Cols, name.FieldToPin) ||
		words.NamesStrip(l.Titled()) || countsWays(l.Titled())) {
		l.Cols[number].Field, l.Cols[number].Running = name.FieldPin, false
	}
}

// countsWays reports whether a title says how many cavities there are, "BCM (11 way)".
func countsWays(title string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(title)), func(w string) bool {
		return name.CountWord(strings.TrimLeft(w, "0123456789")) == "cavities"
	})
}
