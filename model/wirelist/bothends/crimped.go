package bothends

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Crimped keeps of two columns of cavities of one side the first: what the other, "From terminal", holds is crimped on. So is what one
// holds beside ends that tell their cavities, where it is numbers of parts, or the ends say them with a word.
//
//	From pin | From terminal      From  | From terminal | To
//	1        | T-22F              XF1:1 | T-0411        | XP2:A
func Crimped(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	for _, i := range crimpedTwins(cols, prof, rows) {
		cols[i].Field, cols[i].Spared = name.FieldKeep, true
	}
	for _, side := range []name.Field{name.FieldFrom, name.FieldTo} {
		first, end := -1, -1
		for i := range min(len(cols), len(prof)) {
			if cols[i].Field == side && prof[i].Filled > 0 {
				end = i
			}
		}
		for i := range min(len(cols), len(prof)) {
			c, p := &cols[i], &prof[i]
			if c.Field != side+" pin" || p.Filled == 0 || c.Given {
				continue
			}
			parts := c.Of == "" && headsTerminal(c.Head) && areParts(rows, i)
			if first >= 0 && prof[first].Most(prof[first].Cavities) && (!p.Most(p.Cavities) || parts) {
				c.Field = name.FieldKeep
				continue
			}
			pins := end >= 0 && headsTerminal(c.Head) && tellPins(rows, end, i)
			if pins || parts && end >= 0 && (prof[end].Most(prof[end].Ends) || p.Distinct < p.Filled && column.AllParted(rows, end)) {
				c.Field, c.Spared = name.FieldKeep, true
				continue
			}
			first = i
		}
	}
}

// tellPins reports whether most ends beside something say their cavity with a word for it, "J1 pin 1".
func tellPins(rows []table.Row, end, beside int) bool {
	n, say := 0, 0
	for _, r := range rows {
		if end >= len(r.Cells) || beside >= len(r.Cells) || r.Cells[end] == "" || r.Cells[beside] == "" {
			continue
		}
		n++
		if w := strings.Fields(r.Cells[end]); len(w) > 2 && name.IsPinWord(table.Fold(w[len(w)-2])) {
			say++
		}
	}
	return n > 1 && 2*say > n
}

// headsTerminal reports whether a heading is of terminals, a word for cavities as for what is crimped on, or of another fitting.
func headsTerminal(head string) bool {
	return sidehead.IsFitting(table.Fold(head)) || slices.ContainsFunc(name.Words(table.Fold(head)), func(w string) bool {
		return slices.Contains([]string{"terminal", "terminals", "contact", "kontakt", "contacto", "contatto", "borne", "term"}, w)
	})
}

// areParts reports whether each cell of a column is as long as the number of a part, and has a digit: "0462", "T22".
func areParts(rows []table.Row, i int) bool {
	const shortest = 4 // bytes, behind a letter one less (no source)
	n := 0
	for _, r := range rows {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		cell := r.Cells[i]
		if n++; len(cell) < shortest-1 || len(cell) < shortest && !value.IsLetter(cell[0]) || !value.HasDigit(cell) {
			return false
		}
	}
	return n > 1
}
