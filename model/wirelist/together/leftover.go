package together

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// LeavesOver reports whether the columns of another reading leave over what the headings of the table say of a place, or tell one end of
// its wires alone.
func (t *Table) LeavesOver(cols []shape.Column) bool {
	has := func(fields ...name.Field) bool {
		return slices.ContainsFunc(cols, func(c shape.Column) bool { return slices.Contains(fields, c.Field) })
	}
	if has(name.FieldRun, name.FieldVia, name.FieldDevicePin) {
		return false
	}
	from, to := has(name.FieldPin, name.FieldFrom, name.FieldFromPin), has(name.FieldTo, name.FieldToPin)
	if to && !from || !to && has(name.FieldFrom) && !has(name.FieldPin) {
		return true
	}
	for i, c := range cols {
		if i >= len(t.Cols) || !t.filled(i) {
			continue
		}
		of, pins := t.pins(i)
		switch {
		case c.Field == name.FieldKeep && t.headsOutputs(i) && has(name.FieldToPin) && slices.ContainsFunc(cols, isOfUnit):
			// the cavities of these outputs stand in a column of their own
		case c.Field == name.FieldWire && t.Cols[i].Field == name.FieldNumber && (!t.Prof[i].Unique() || t.headsDevice(i)):
			return true // the numbers of wires do not come again
		case (c.Field == name.FieldKeep || c.Field == name.FieldIgnore) && t.isNumberOf(i):
			return true // "Component | Pos."
		case c.Field == name.FieldPin && (t.Cols[i].Field == name.FieldConnector || of != "" && c.Of == "" && has(name.FieldConnector) &&
			t.deviceOf(i, of) == none):
			return true // a column of plugs, or the cavities of a plug that the heading names, taken for those of another
		case (c.Field == name.FieldKeep || c.Field == name.FieldIgnore) && (pins && !t.wholeEnds() || t.headsDevice(i)):
			return true
		case c.Field == name.FieldSignal && t.Cols[i].Field != name.FieldSignal && t.headsDevice(i) &&
			(t.isBeforePins(i) || t.numbersHead(i)):
			return true // devices, and no names of nets
		case of != "" && c.Of != "" && t.deviceOf(i, of) >= 0:
			return true // "Module | Module pin"
		case !c.Known() && (c.Field == name.FieldKeep || c.Field == name.FieldSignal || c.Field == name.FieldConnector) && t.headedPads(i):
			return true
		case of != "" && c.Of != "" && name.Key(of) != name.Key(c.Of) && t.startsWithPin(c.Of):
			return true // all of "Broche ECU" is taken for the device
		}
	}
	return false
}

// isOfUnit reports whether a column is of the cavities of a unit that its heading names.
func isOfUnit(c shape.Column) bool {
	return c.Of != "" && (c.Field == name.FieldPin || c.Field == name.FieldFromPin)
}

// wholeEnds reports whether some column holds connectors and their cavities: what is headed as one of cavities is then crimped on.
func (t *Table) wholeEnds() bool {
	for i := range t.Cols {
		if t.filled(i) && t.headsDevice(i) && t.Prof[i].Most(t.Prof[i].Ends) {
			return true
		}
	}
	return false
}

// startsWithPin reports whether a name begins with a word for cavities.
func (t *Table) startsWithPin(of string) bool {
	first, _, ok := strings.Cut(of, " ")
	return ok && t.isPin(table.Fold(first))
}

// isBeforePins reports whether a column stands right before one of cavities whose heading names no device.
func (t *Table) isBeforePins(i int) bool {
	if i+1 >= len(t.Cols) || !t.filled(i+1) {
		return false
	}
	of, ok := t.pins(i + 1)
	return ok && of == ""
}
