package settle

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// An end of a wire is written in two columns: the connector or device, and right behind it the cavity there. The headings of
// the two go together.

// endColumns finds the columns that say an end of each wire, by how they stand beside each other.
type endColumns struct{ *Look }

// pairs finds such columns, and gives their connectors a side: two pairs are the from and the to, one beside the cavities of
// the table itself is the far end.
//
//	Box conn | Box pin | Signal | Wheel conn | Wheel pin      Pin | Channel | Sensor | Sensor pin
//	J41      | 1       | VBUS   | RW1-P1     | 1              1   | AN1     | Front  | 3
func (l endColumns) pairs() {
	if l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldVia) {
		return
	}
	var of []int // of the connectors; the cavities stand behind
	for i := 0; i+1 < len(l.Cols); i++ {
		if l.isPair(i) {
			of = append(of, i)
		}
	}
	connectors := 0
	for _, c := range l.Cols {
		if c.Field == name.FieldConnector {
			connectors++
		}
	}
	if connectors > len(of) && len(of) > 0 {
		return // "Device | Connector | Pin", twice: three columns an end
	}
	lone := -1
	for i, c := range l.Cols {
		if c.Field == name.FieldPin && l.Prof[i].Filled > 0 && !slices.Contains(of, i-1) {
			if lone >= 0 {
				return
			}
			lone = i
		}
	}
	switch {
	case len(of) == 2 && lone < 0:
		for k, f := range [][2]name.Field{{name.FieldFrom, name.FieldFromPin}, {name.FieldTo, name.FieldToPin}} {
			// "Connector | Pin | … | Mate conn | Mate pin": a table of the cavities of several connectors, with a far end.
			if k == 0 && l.Cols[of[0]].Field == name.FieldConnector && l.Cols[of[0]+1].Field == name.FieldPin && len(name.Words(table.Fold(
				l.Cols[of[0]].Head))) == 1 && l.Cols[of[1]].Field != name.FieldConnector {
				continue
			}
			l.Cols[of[k]].Field, l.Cols[of[k]+1].Field = f[0], f[1]
		}
	case len(of) == 1 && lone >= 0 && lone < of[0] && l.Cols[of[0]].Field != name.FieldConnector:
		l.Cols[of[0]].Field, l.Cols[of[0]+1].Field = name.FieldTo, name.FieldToPin
	}
}

// isPair reports whether a column holds connectors or devices and the one behind it their cavities, by headings that go
// together: "Box conn | Box pin", "Sensor | Sensor pin", "Mate conn | Mate pin", "Connector | Pin".
func (l endColumns) isPair(i int) bool {
	c, pin := &l.Cols[i], &l.Cols[i+1]
	a, b := name.Words(table.Fold(c.Head)), name.Words(table.Fold(pin.Head))
	if c.Given || pin.Given || len(a) == 0 || len(b) == 0 || l.Prof[i].Filled == 0 || l.Prof[i+1].Filled == 0 ||
		l.Heads.Words[b[len(b)-1]].Field != name.FieldPin {
		return false
	}
	saysConnector := l.Heads.Words[a[len(a)-1]].Field == name.FieldConnector
	switch {
	case len(b) > 1 && slices.Equal(a, b[:len(b)-1]): // "Sensor | Sensor pin"
		return true

	case len(b) > 1 && saysConnector && len(a) > 1 && slices.Equal(a[:len(a)-1], b[:len(b)-1]): // "Box conn | Box pin"
		return true
	case len(b) == 1 && saysConnector: // "Connector | Pin"
		return true
	}
	return false
}

// repeatedDevices takes two columns of one heading, each right before a column of cavities, for the devices of the two ends,
// whatever their heading is.
//
//	Slot | Pin | Net  | Slot | Pin
//	S1   | 1/A | +12V | S2   | 1/A
func (l endColumns) repeatedDevices() {
	if l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun) {
		return
	}
	var of []int
	for i := 0; i+1 < len(l.Cols); i++ {
		if c := &l.Cols[i]; !c.Given && c.Head != "" && l.Cols[i+1].Field == name.FieldPin && l.Prof[i].Filled > 0 &&
			(c.Field == name.FieldKeep || c.Field == name.FieldSignal || c.Field == name.FieldConnector) {
			if i > 0 && l.Cols[i-1].Field == name.FieldConnector {
				return // a device, its plug, and the cavity
			}
			of = append(of, i)
		}
	}
	if len(of) != 2 || table.Fold(l.Cols[of[0]].Head) != table.Fold(l.Cols[of[1]].Head) ||
		table.Fold(l.Cols[of[0]+1].Head) != table.Fold(l.Cols[of[1]+1].Head) {
		return
	}
	l.Cols[of[0]].Field, l.Cols[of[0]+1].Field = name.FieldFrom, name.FieldFromPin
	l.Cols[of[1]].Field, l.Cols[of[1]+1].Field = name.FieldTo, name.FieldToPin
}
