package settle

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// plugColumn takes the column before the cavities for their connectors where its heading ends with a word for one,
// "BMS plug", and its cells are fewer than the rows or come again.
//
//	BMS plug | Pin | Signal
//	J1       | 1   | TAP0
//	         | 2   | TAP1
func (l endColumns) plugColumn() {
	if l.Has(l.Cols, name.FieldConnector) && l.Holds(l.Cols, name.FieldConnector) < l.Find(l.Cols, name.FieldPin) {
		return
	}
	for i := 0; i+1 < len(l.Cols); i++ {
		c, p := &l.Cols[i], &l.Prof[i]
		w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
		if c.Given || c.Field != name.FieldKeep || l.Cols[i+1].Field != name.FieldPin || len(w) == 0 || p.Filled == 0 || p.Prose > 0 {
			continue
		}
		if !(len(w) > 1 && l.Heads.Words[w[len(w)-1]].Field == name.FieldConnector) && !l.startsGroups(i) &&
			!(l.HeadsDevice(i) && p.Filled < l.Prof[i+1].Filled && column.StartsFilled(l.Src.Rows, i)) {
			continue
		}
		if p.Distinct < p.Filled || p.Filled < l.Prof[i+1].Filled {
			c.Field = name.FieldConnector
			return
		}
	}
}

// pinBehindTo takes cavities right behind the column of the far end for its cavities, where the near end has its own.
func (l endColumns) pinBehindTo() {
	pin := l.Holds(l.Cols, name.FieldPin)
	for i := 1; i < len(l.Cols); i++ {
		if c := &l.Cols[i]; pin >= 0 && pin < i-1 && !c.Given && c.Field == name.FieldPin && l.Cols[i-1].Field == name.FieldTo &&
			!l.Has(l.Cols, name.FieldFrom, name.FieldToPin) {
			c.Field = name.FieldToPin
			return
		}
	}
}

// startsGroups reports whether a column names the connector of each group of rows.
func (l *Look) startsGroups(i int) bool {
	return column.StartsGroups(l.Src.Rows, l.Prof, i) && !column.IsOneThing(l.Prof, i, l.Titled(), l.Src.Table.Sheet)
}

// pads counts the cells of a column that are short and have a digit or a pole.
func (l *Look) pads(i int) int { return column.ShortPads(l.Src.Rows, i, MostPad) }
