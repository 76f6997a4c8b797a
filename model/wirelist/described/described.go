package described

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// Settle takes a column that describes what another one names for notes: the short name is that of the net, where each cavity with a
// description has one, but for those that are free by it. What a wire is for describes it where most of the names are of one wire each:
// "power" and "signal" tell none apart.
//
//	Pin | Signal name | Description               Pin | Symbol | Function
//	1   | X_CS0       | select of the first drum  1   | UB     | supply of the valve
//	2   | -           | not connected             2   | -      | free
func Settle(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	signal := slices.IndexFunc(cols, func(c shape.Column) bool {
		return c.Field == name.FieldSignal && words.SaysNameOfNet(c.Head)
	})
	if signal < 0 {
		signal = designations(cols, prof)
	}
	if signal < 0 {
		signal = shortNames(cols, prof)
	}
	if signal < 0 || prof[signal].Filled == 0 {
		return
	}
	for i := range cols {
		if c := &cols[i]; i != signal && c.Field == name.FieldSignal && !c.Given && prof[i].Filled > 0 && prof[i].Sized == 0 &&
			(words.IsDescription(c.Head) && i > signal || words.SaysUse(c.Head) && 2*prof[signal].Distinct > prof[signal].Filled) &&
			!slices.ContainsFunc(rows, func(r table.Row) bool { return isUnnamed(r, signal, i) }) {
			c.Field, cols[signal].Field = name.FieldNote, name.FieldSignal
			cols[signal].Know()
		}
	}
}

// isUnnamed reports whether a row describes a wire that it does not name.
func isUnnamed(r table.Row, signal, described int) bool {
	if described >= len(r.Cells) || shape.IsText(r) || value.IsNothing(r.Cells[described]) {
		return false
	}
	return (signal >= len(r.Cells) || value.IsNothing(r.Cells[signal])) && name.StateOfNote(r.Cells[described]) == name.Used
}

// designations is the column of names that a designation heads, where they are short: "FS1". −1 where there is none.
func designations(cols []shape.Column, prof []column.Profile) int {
	for i, c := range cols {
		if p := &prof[i]; c.Field == name.FieldSignal && words.SaysDesignation(c.Head) && p.Prose == 0 && 2*p.Long < p.Filled {
			return i
		}
	}
	return -1
}

// shortNames is the column of short forms that nobody takes for anything, each of one row or most; −1 where there is none.
func shortNames(cols []shape.Column, prof []column.Profile) int {
	for i, c := range cols {
		if p := &prof[i]; c.Field == name.FieldKeep && !c.Given && words.SaysShortName(c.Head) && p.Filled > 1 && 2*p.Distinct > p.Filled {
			return i
		}
	}
	return -1
}
