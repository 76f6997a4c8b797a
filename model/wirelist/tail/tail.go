// Package tail tells the rows of small tables without headings that stand below a list of wires: fuses with their ratings, lugs and
// other parts with how many there are, what was changed.
package tail

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Titles reports whether a text is the title of a small table that may fill as many columns as the list.
func Titles(text string) bool { return TitlesBill(text) || SaysFacts(text) || SaysChanges(text) }

// Is reports whether a row is of a small table other than one of changes, below a list of wires or below cavities.
func Is(cols []shape.Column, above []table.Row, r table.Row, title string, wires bool) bool {
	if BeginsWithAmount(cols, r) || IsBill(cols, above, r, title) {
		return true
	}
	if wires {
		return IsFuses(cols, r, title) || SaysNoWire(cols, r, title)
	}
	return IsBelowPins(cols, above, r, title) || IsFact(cols, r, title)
}

// IsFuses reports whether a row is fuses and their ratings: a rating stands in a column that is of no current, no size and no colour
// is in the row, and the title is of fuses or the row begins with one.
func IsFuses(cols []shape.Column, r table.Row, title string) bool {
	_, first := r.Filled()
	of := len(first) < 4 && strings.HasPrefix(table.Fold(first), "f") && strings.Trim(first[1:], "0123456789") == ""
	for _, w := range name.Words(table.Fold(title)) {
		of = of || name.OtherKind(w) == "fuses"
	}
	rated := false
	for i, cell := range r.Cells {
		if cell == "" || i >= len(cols) {
			continue
		}
		switch cols[i].Field {
		case name.FieldGauge, name.FieldColour:
			return false
		case name.FieldCurrent, name.FieldFuse:
		default:
			_, ok := value.ParseCurrent(cell, false, value.MarkUnknown)
			rated = rated || ok && strings.ContainsAny(cell, "aA")
		}
	}
	return of && rated
}

// SaysNoWire reports whether a row has no end, size, colour or name, and what stands in the place of its id is none, or is of a
// table of lugs or parts by its title.
func SaysNoWire(cols []shape.Column, r table.Row, title string) bool {
	of := slices.ContainsFunc(name.Words(table.Fold(title)), func(w string) bool {
		return name.OtherKind(w) == "parts" || sidehead.IsFitting(w)
	})
	filled, _ := r.Filled()
	for i, cell := range r.Cells {
		if cell == "" || i >= len(cols) {
			continue
		}
		switch cols[i].Field {
		case name.FieldKeep, name.FieldIgnore, name.FieldNote, name.FieldUnit, name.FieldFuse, name.FieldCurrent:
		case name.FieldWire, name.FieldNumber, name.FieldCable:
			if !of && !strings.Contains(cell, " ") {
				return false
			}
		case name.FieldColour, name.FieldTo, name.FieldToPin:
			return false
		default:
			if !of || !isCount(cell) {
				return false
			}
		}
	}
	return filled > 1 || of
}

// isCount reports whether a cell is how many there are of a part: "12", "8 per set", "4 x".
func isCount(cell string) bool {
	number, _, _ := strings.Cut(cell, " ")
	return strings.Trim(number, "0123456789x") == "" && number != "" && number[0] <= '9'
}
