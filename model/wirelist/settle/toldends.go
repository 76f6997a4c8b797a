package settle

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// toldEnds takes a column of a pin table that tells what to do with each wire for the far ends, where most of its cells say where
// to take it.
//
//	Pin | Wire | What it is | What to do
//	1   | red  | Heater     | to L5 pin 1
//	2   | blue | Old alarm  | cut and insulate
func (l *Look) toldEnds() {
	if !l.AnotherPin(-1) || l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun) {
		return
	}
	for i := range l.Cols {
		c := &l.Cols[i]
		if c.Given || c.Field != name.FieldKeep && c.Field != name.FieldNote && c.Field != name.FieldSignal ||
			c.Field == name.FieldSignal && !l.another(i, name.FieldSignal) {
			continue
		}
		least := 2
		if saysDoing(c.Head) {
			least = 1
		}
		if to, filled := column.TellsTo(l.Src.Rows, i, l.Lang); to >= least && 2*to >= filled {
			c.Field, c.Told = name.FieldTo, true
			return
		}
	}
}

// saysDoing reports whether a heading is of what somebody shall do: "What to do", "Action".
func saysDoing(head string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(head)), func(w string) bool {
		switch w {
		case "do", "action", "tun", "aktion", "faire", "hacer", "accion", "fare", "azione", "doen", "gora", "fazer":
			return true
		}
		return false
	})
}
