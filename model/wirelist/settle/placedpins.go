package settle

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
func (l *Look) placedPins() {
	for i := range l.Cols {
		if c := &l.Cols[i]; !c.Given && !c.Alias && c.Field == name.FieldKeep && l.Prof[i].Filled > 0 && l.isPlaced(c.Head) {
			c.Field = name.FieldPin
			c.Know()
		}
	}
	if !l.Has(l.Cols, name.FieldPin) {
		return
	}
	for i := range l.Cols {
		c := &l.Cols[i]
		w := name.Words(table.Fold(c.Head))
		if !c.Given && l.EndsInPin(c.Head) && c.Field != name.FieldPin && slices.ContainsFunc(w, pads.IsSoftware) {
			c.Field, c.Of, c.Alias = name.FieldKeep, "", true // "Kernel GPIO"
		}
	}
}

// isPlaced reports whether a heading is words that place a cavity, one for a cavity, and none or one that says it is a number.
func (l *Look) isPlaced(head string) bool {
	w := name.Words(name.WithoutBrackets(table.Fold(head)))
	if n := len(w); n > 2 && pads.IsNumberWord(w[n-1]) {
		w = w[:n-1]
	}
	if len(w) < 2 || l.Heads.Words[w[len(w)-1]].Field != name.FieldPin || pads.IsChipWord(w[len(w)-1]) {
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
func (l *Look) countedPins() {
	if l.Has(l.Cols, name.FieldPin, name.FieldFrom, name.FieldTo, name.FieldRun, name.FieldWire, name.FieldVia) ||
		!l.Has(l.Cols, name.FieldSignal) {
		return
	}
	at, chips := -1, 0
	for i := range l.Cols {
		c, p := &l.Cols[i], &l.Prof[i]
		w := name.Words(table.Fold(c.Head))
		switch {
		case len(w) == 0 || c.Given:
		case l.EndsInPin(c.Head) && pads.IsChipWord(w[len(w)-1]) && p.Filled < column.Data(l.Src.Rows):
			chips++
		case l.EndsInPin(c.Head):
			return
		case at < 0 && (c.Field == name.FieldNumber || c.Field == name.FieldKeep) && pads.IsNumberWord(w[len(w)-1]) &&
			p.Filled == column.Data(l.Src.Rows) && column.CountsUp(l.Src.Rows, i):
			at = i
		}
	}
	if at < 0 || chips == 0 {
		return
	}
	l.Cols[at].Field = name.FieldPin
	for i := range l.Cols {
		if c := &l.Cols[i]; i != at && !c.Given && l.EndsInPin(c.Head) {
			c.Field, c.Of, c.Alias = name.FieldKeep, "", true
		}
	}
}
