package farcolumn

import (
	"slices"
	"strings"

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
	joined := len(prof) > 0 && isOpen(cols, prof, 0) && prof[0].Unique() && prof[0].All(prof[0].Cavities) && endsInPin(cols[0].Head)
	for i := range prof {
		c := &cols[i]
		if joined && i == 0 || !joined && !another(i) {
			continue
		}
		side := isOpen(cols, prof, i) && ofSide(c.Head, &prof[i], rows, i)
		if side && slices.ContainsFunc(cols[i+1:len(prof)], func(o shape.Column) bool { return isSide(o.Head) }) {
			return // the wires of a wall have two
		}
		if !side && !(couldBeHeaders(cols, prof, i) && ofHeaders(rows, i)) {
			continue
		}
		*c = shape.Column{Field: name.FieldTo, Head: c.Head}
		if c.Guessed = side && !saysPlaces(rows, i); !c.Guessed {
			c.Know()
		}
		if joined {
			cols[0].Field = name.FieldPin
			cols[0].Know()
		}
		return
	}
}

// couldBeHeaders reports whether a column is headed by a board, and nobody knows it or it is taken for connectors or cavities by that,
// behind the pins of a plug that count on from header to header.
func couldBeHeaders(cols []shape.Column, prof []column.Profile, i int) bool {
	c := &cols[i]
	if !namesBoard(c.Head) {
		return false
	}
	taken := c.Field == name.FieldConnector || c.Field == name.FieldPin && !c.Known()
	return isOpen(cols, prof, i) || taken && !c.Given && i > 0 && prof[i].Filled >= least && prof[0].Unique() &&
		prof[0].All(prof[0].Cavities)
}

// endsInPin reports whether a heading of one word ends in one for cavities, "Steckerpin".
func endsInPin(head string) bool {
	w := headWords(head)
	return len(w) == 1 && slices.ContainsFunc([]string{"pin", "pins", "klemme", "kontakt", "stift"}, func(of string) bool {
		before, ok := strings.CutSuffix(w[0], of)
		return ok && len(before) > 2
	})
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
