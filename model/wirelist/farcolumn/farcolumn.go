package farcolumn

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// least is how many cells of a column say what it is (no source).
const least = 3

// Settle takes a column for the far ends of the cavities that another has, where none has them yet; another reports whether a column that
// is not the one at some place holds cavities. title is what stands above the table.
func Settle(cols []shape.Column, prof []column.Profile, rows []table.Row, title string, another func(i int) bool) {
	fittingsOfEnd(cols, prof, rows)
	padsOfHeading(cols, prof, rows, title)
	if has(cols, prof, name.FieldTo, name.FieldToPin, name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldVia,
		name.FieldDevicePin) || boardAndDevices(cols, prof, rows) || twoDevices(cols, prof, rows, title) {
		return
	}
	for i := range prof {
		if c := &cols[i]; c.Field == name.FieldConnector && !c.Given && i > 0 && prof[0].Unique() && prof[0].All(prof[0].Cavities) &&
			prof[i].Filled >= least && another(i) && namesBoard(c.Head) && ofHeaders(rows, i) {
			c.Field = name.FieldTo // the pins in the first column count on from header to header
			return
		}
		if !isOpen(cols, prof, i) || !another(i) {
			continue
		}
		if ofSide(cols[i].Head, &prof[i], rows, i) || namesBoard(cols[i].Head) && ofHeaders(rows, i) {
			cols[i].Field = name.FieldTo
			cols[i].Know()
			return
		}
	}
}

// has reports whether some column that holds something is of one of some fields.
func has(cols []shape.Column, prof []column.Profile, fields ...name.Field) bool {
	for i := range prof {
		if prof[i].Filled > 0 && slices.Contains(fields, cols[i].Field) {
			return true
		}
	}
	return false
}

// isOpen reports whether nobody knows what a column with a heading holds.
func isOpen(cols []shape.Column, prof []column.Profile, i int) bool {
	c := &cols[i]
	w := headWords(c.Head)
	return !c.Given && c.Field == name.FieldKeep && c.OfEnd == "" && prof[i].Filled >= least && len(w) > 0 && len(w) < 4 &&
		!name.IsMeasure(w) && !name.IsSpent(c.Head) && !words.SaysWork(w)
}

// headWords are the words of a heading, folded, without what stands in brackets.
func headWords(head string) []string { return name.Words(name.WithoutBrackets(table.Fold(head))) }

// cells reports whether something holds of each cell of a column that says anything, as far as a profile looks.
func cells(rows []table.Row, i int, take func(cell string) bool) bool {
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		if !take(r.Cells[i]) {
			return false
		}
	}
	return true
}
