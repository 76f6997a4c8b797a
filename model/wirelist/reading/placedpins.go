package reading

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/table"
)

// placedPins takes a heading that says of cavities only that they are those of the connector itself for "Pin": what stands before
// the word for them names no device. A column that another one of cavities made a second name of stays that.
//
//	Physical pin | Signal       Header pin no. | Signal
//	1            | Lamp         1              | Lamp
func (l *look) placedPins() {
	for i := range l.cols {
		if c := &l.cols[i]; !c.Given && !c.Alias && c.Field == name.FieldKeep && l.prof[i].Filled > 0 && l.isPlaced(c.Head) {
			c.Field = name.FieldPin
			c.Know()
		}
	}
	if !l.has(l.cols, name.FieldPin) {
		return
	}
	for i := range l.cols {
		c := &l.cols[i]
		w := name.Words(table.Fold(c.Head))
		if !c.Given && l.endsInPin(c.Head) && c.Field != name.FieldPin && slices.ContainsFunc(w, pads.IsSoftware) {
			c.Field, c.Of, c.Alias = name.FieldKeep, "", true // "Kernel GPIO"
		}
	}
}

// isPlaced reports whether a heading is words that place a cavity, one for a cavity, and none or one that says it is a number.
func (l *look) isPlaced(head string) bool {
	w := name.Words(name.WithoutBrackets(table.Fold(head)))
	if n := len(w); n > 2 && pads.IsNumberWord(w[n-1]) {
		w = w[:n-1]
	}
	if len(w) < 2 || l.h.Words[w[len(w)-1]].Field != name.FieldPin || pads.IsChipWord(w[len(w)-1]) {
		return false
	}
	for _, of := range w[:len(w)-1] {
		if !pads.IsPlacing(of) {
			return false
		}
	}
	return true
}

// countedPins takes a column that numbers the rows from 1 without a gap for the cavities where the only others are what a chip calls
// them, and not every row has one. A software counts the cavities of its boards so.
//
//	Lib no. | Function | Hub GPIO | Kernel GPIO
//	1       | 3V3      |          |
//	2       | SDA      | 2        | 402
func (l *look) countedPins() {
	if l.has(l.cols, name.FieldPin, name.FieldFrom, name.FieldTo, name.FieldRun, name.FieldWire, name.FieldVia) ||
		!l.has(l.cols, name.FieldSignal) {
		return
	}
	at, chips := -1, 0
	for i := range l.cols {
		c, p := &l.cols[i], &l.prof[i]
		w := name.Words(table.Fold(c.Head))
		switch {
		case len(w) == 0 || c.Given:
		case l.endsInPin(c.Head) && pads.IsChipWord(w[len(w)-1]) && p.Filled < column.Data(l.src.Rows):
			chips++
		case l.endsInPin(c.Head):
			return
		case at < 0 && (c.Field == name.FieldNumber || c.Field == name.FieldKeep) && pads.IsNumberWord(w[len(w)-1]) &&
			p.Filled == column.Data(l.src.Rows) && column.CountsUp(l.src.Rows, i):
			at = i
		}
	}
	if at < 0 || chips == 0 {
		return
	}
	l.cols[at].Field = name.FieldPin
	for i := range l.cols {
		if c := &l.cols[i]; i != at && !c.Given && l.endsInPin(c.Head) {
			c.Field, c.Of, c.Alias = name.FieldKeep, "", true
		}
	}
}
