package settle

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/endtext"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// asksWhere takes a column below "Where" for the far ends of wires: where the table has their cavities, their names, their colours
// or sizes, and no other column for the far end. Below the same heading a list of parts says where they are bought.
//
//	# | Signal | Wire       | Where
//	1 | VBAT   | 16 AWG red | main switch
func (l endColumns) asksWhere() {
	if !l.Has(l.Cols, name.FieldPin, name.FieldNumber) || !l.Has(l.Cols, name.FieldSignal) ||
		!l.Has(l.Cols, name.FieldColour, name.FieldGauge, name.FieldWire) ||
		l.Has(l.Cols, name.FieldTo, name.FieldToPin, name.FieldFrom, name.FieldRun) {
		return
	}
	for i := range l.Cols {
		c, p := &l.Cols[i], &l.Prof[i]
		if c.Field == name.FieldKeep && !c.Given && words.AsksWhere(table.Fold(c.Head)) && p.Filled > 0 &&
			4*(p.Prose-l.opens(i)) <= p.Filled {
			c.Field = name.FieldTo
			return
		}
	}
}

// opens counts the texts of a column that say that an end is open, "open at the coil".
func (l endColumns) opens(i int) (n int) {
	for _, r := range l.Src.Rows[:min(len(l.Src.Rows), column.MostLooked)] {
		if i < len(r.Cells) && strings.Contains(r.Cells[i], " ") && endtext.SaysOpen(r.Cells[i]) {
			n++
		}
	}
	return n
}
