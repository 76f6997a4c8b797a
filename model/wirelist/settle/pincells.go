package settle

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
)

// pinCells takes a column for the cavities of what its heading names where each of its cells says that it is one.
//
//	Panel SWP | Switch | Wire       | Dash loom
//	pin 1     | master | 16 AWG red | power relay, pin 86
func (l *Look) pinCells() {
	if l.AnotherPin(-1) || l.Has(l.Cols, name.FieldFrom, name.FieldFromPin, name.FieldRun) {
		return
	}
	for i := range l.Cols {
		c, p := &l.Cols[i], &l.Prof[i]
		if c.Given || c.Field != name.FieldKeep && c.Field != name.FieldConnector && c.Field != name.FieldSignal ||
			p.Filled < 2 || !p.Unique() {
			continue
		}
		n := 0
		for _, r := range l.Src.Rows[:min(len(l.Src.Rows), column.MostLooked)] {
			if i < len(r.Cells) && name.IsPinCell(r.Cells[i]) {
				n++
			}
		}
		if n == p.Filled {
			c.Field, c.Of = name.FieldPin, c.Head
			return
		}
	}
}
