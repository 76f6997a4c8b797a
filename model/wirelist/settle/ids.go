package settle

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// idsByCells finds the column of the numbers of the wires where its heading does not say it: its cells are short, have a digit, and
// none comes twice.
func (l *Look) idsByCells() {
	for i := range l.Cols {
		c := &l.Cols[i]
		if p := &l.Prof[i]; c.Given || c.Head == "" || p.Filled < 3 || !p.All(p.Ids) || p.Distinct != p.Filled || p.Ends > 0 {
			continue
		}
		if l.tagsCircuits(i) || l.startsRuns(i) || l.numbersCircuits(i) {
			c.Field = name.FieldWire
			return
		}
	}
}

// tagsCircuits reports whether a column headed as a tag is of numbers beside a column of circuits that names them in words.
//
//	Way | Tag | Circuit | Core
//	1   | T1  | Forward | red
//	2   | T2  | Reverse | blue
func (l *Look) tagsCircuits(i int) bool {
	f := l.Cols[i].Field
	if f != name.FieldSignal && f != name.FieldKeep || !words.HeadsLabel(l.Cols[i].Head) {
		return false
	}
	return f == name.FieldSignal && l.namesBeside(i) || column.TagsRows(l.Cols, l.Src.Rows, i)
}

// startsRuns reports whether a column that nobody knows stands first in a list of both ends, no column numbers the wires, and
// another has their names; one that is a series, "W100", "W101", may stand anywhere.
//
//	Mark | Function | From     | To
//	B01  | Bilge    | Panel 12 | Float switch
func (l *Look) startsRuns(i int) bool {
	c := &l.Cols[i]
	w := name.Words(table.Fold(c.Head))
	series := column.AreSeries(l.Src.Rows, i)
	return c.Field == name.FieldKeep && (i == 0 || series) && !l.another(i, name.FieldWire) && l.another(i, name.FieldFrom) &&
		l.another(i, name.FieldTo) && (series || l.another(i, name.FieldSignal) || l.hasWords(i)) && !name.IsRemark(w) && !name.IsMeasure(w)
}

// hasWords reports whether one column other than one, and no second, is of words and nobody knows what it is.
func (l *Look) hasWords(i int) bool {
	n := 0
	for k, c := range l.Cols {
		if p := &l.Prof[k]; k != i && c.Field == name.FieldKeep && p.Filled > 0 {
			if n++; !p.Most(p.Long) || p.Ends > 0 || p.Colours > 0 {
				return false
			}
		}
	}
	return n == 1
}

// namesBeside reports whether a column beside one has the names of nets or circuits: words, hardly one of which comes twice.
func (l *Look) namesBeside(i int) bool {
	for k, c := range l.Cols {
		p := &l.Prof[k]
		if k != i && (c.Field == name.FieldSignal || c.Field == name.FieldWire && shape.IsCircuit(c.Head)) && p.Most(p.Long) &&
			!p.Most(p.Ids) && 4*p.Colours < p.Filled {
			return true
		}
	}
	return false
}
