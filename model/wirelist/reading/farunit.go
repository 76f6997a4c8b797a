package reading

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// farUnit reads the table of a connector that its title names, with one more column that is headed by a control unit or by another
// connector: the far cavities, those of the unit. A unit of several plugs has the letter of the plug before the number.
//
//	### CAM (cam sensor, 3 way)
//	Way | Signal | Colour | ECU
//	1   | 5 V    | red    | A-3
//	2   | Signal | white  | A-12
func farUnit(l *look) []shape.Column {
	pin, value := l.Holds(l.Cols, name.FieldPin), l.Holds(l.Cols, name.FieldColour, name.FieldGauge, name.FieldSignal)
	if pin < 0 || value < 0 || l.Titled() == "" || l.Cols[pin].Of != "" || l.Cols[pin].InCell || l.Has(l.Cols, name.FieldFrom,
		name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldVia, name.FieldDevicePin, name.FieldConnector) {
		return nil
	}
	at := -1
	for i, c := range l.Cols {
		if i == pin || c.Given || c.Field != name.FieldKeep || !l.Prof[i].Unique() || unitOf(c.Head) == "" {
			continue
		}
		if at >= 0 || !areCavities(l.Src.Rows, i) || name.Key(unitOf(c.Head)) == name.Key(l.Titled()) {
			return nil
		}
		at = i
	}
	if at < 0 {
		return nil
	}
	cols := slices.Clone(l.Cols)
	cols[at].Field, cols[at].Of = name.FieldToPin, unitOf(cols[at].Head)
	return cols
}

// unitOf is the control unit or the connector that a heading names and nothing else, "ECU", "To ECU", "X5"; "" where it names none.
func unitOf(head string) string {
	w := strings.Fields(head)
	if len(w) > 1 && slices.Contains([]string{"to", "at", "nach", "an", "zu", "zum", "vers", "a", "al", "verso"}, table.Fold(w[0])) {
		w = w[1:]
	}
	if len(w) == 1 && (isControlUnit(w[0]) || isPlug(w[0])) || len(w) == 2 && (isControlUnit(w[0]) || isControlUnit(w[1])) {
		return strings.Join(w, " ")
	}
	return ""
}

// isPlug reports whether a word is the designator of a connector or a device: one letter alone is so only where no list has it for a
// length, a temperature, a voltage or a wire.
func isPlug(w string) bool {
	letters := strings.TrimRight(w, "0123456789")
	return name.IsDesignator(w) && (len(letters) > 1 || strings.Contains("XJPKCSMABQ", letters))
}

// isControlUnit reports whether a word names a control unit: of pumps and relays there are several, and a number below them says which.
func isControlUnit(w string) bool {
	w = table.Fold(w)
	return name.IsUnit(w) && w != "relay" && w != "pump"
}

// areCavities reports whether the cells of a column are cavities, and nothing else: "12", "A12", "A-12", "A 12". Some of them
// are no names of supplies.
func areCavities(rows []table.Row, i int) bool {
	n, numbered := 0, 0
	for _, r := range rows {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		cell := strings.TrimSpace(r.Cells[i])
		front, back, ok := strings.Cut(strings.Map(dashOf, cell), "-")
		if ok && len(front) < 3 && name.IsCavity(front) && name.IsCavity(back) {
			cell = front + back
		}
		if k, err := strconv.Atoi(cell); !name.IsCavity(cell) || err == nil && k > mostCavities {
			return false
		}
		n++
		if strings.ContainsAny(cell, "0123456789") {
			numbered++
		}
	}
	return n > 0 && 2*numbered >= n
}

// dashOf writes a sign that parts the letter of a plug from its cavity as a dash.
func dashOf(r rune) rune {
	if strings.ContainsRune("-–. ", r) {
		return '-'
	}
	return r
}
