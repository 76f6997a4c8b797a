package reading

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// firstPins takes the first column of a table for its cavities where nobody knows the heading, and the table has none and no
// near end: its cells count up from the first, and values of wires stand beside them.
//
//	Kapocs | Wire | Colour
//	1      | V1   | red
//	2      | V2   | black
func firstPins(l *look) []shape.Column {
	if len(l.Src.Head) == 0 || l.AnotherPin(-1) || l.Holds(l.Cols, name.FieldFrom, name.FieldFromPin, name.FieldRun,
		name.FieldNumber) >= 0 ||
		l.Holds(l.Cols, name.FieldColour, name.FieldGauge) < 0 {
		return nil
	}
	for i := range l.Cols {
		c := &l.Cols[i]
		if l.Prof[i].Filled == 0 {
			continue
		}
		if c.Field != name.FieldKeep || c.Given || c.Head == "" || !column.CountsUp(l.Src.Rows, i) ||
			name.IsRemark(name.Words(table.Fold(c.Head))) {
			return nil // it is the first column with something in it
		}
		cols := slices.Clone(l.Cols)
		cols[i].Field, cols[i].Guessed = name.FieldPin, true
		return cols
	}
	return nil
}
