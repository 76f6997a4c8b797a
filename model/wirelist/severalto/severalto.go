// Package severalto joins the columns of a pin table that each say one more place where the wires of a cavity go, "To 1" and "To 2".
//
//	Pin | Signal | To 1 | To 2          Pin | Signal | To
//	1   | +30    | F1   |         ->    1   | +30    | F1
//	3   | +15    | F4   | F5            3   | +15    | F4, F5
//
// A number behind a word for where a wire goes counts places, and is no device with that name.
package severalto

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Rows are the rows of a sheet, such columns joined in the place of the first of them.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows // a person has said what the columns are
	}
	rows := t.Rows
	cloned := false
	for i := range t.Rows {
		word, of := places(h, t.Rows[i])
		if of == nil {
			continue
		}
		if !cloned {
			rows, cloned = slices.Clone(rows), true
		}
		rows[i].Cells = joined(rows[i].Cells, of, word)
		for k := i + 1; k < len(rows) && !h.IsHead(rows[k]); k++ {
			rows[k].Cells = joined(rows[k].Cells, of, "")
		}
	}
	return rows
}

// places are the columns of a row of headings that count places, and the word for them; nil where they are no two, or the row heads no
// cavities, or both ends.
func places(h shape.Headings, r table.Row) (word string, of []int) {
	last := ""
	pins := false
	for i, c := range r.Cells {
		w := name.Words(table.Fold(c))
		switch n := len(w); {
		case n == 0:
		case n == 2 && sidehead.IsEndWord(w[0]):
			return "", nil // "End A" and "End B" are the two ends of each wire
		case n == 1 && h.Words[w[0]].Field == name.FieldPin:
			pins = true
		case n == 2 && h.Words[w[0]].Field == name.FieldFrom, n == 1 && h.Words[w[0]].Field == name.FieldTo:
			return "", nil
		case n == 2 && h.Words[w[0]].Field == name.FieldTo && !h.Words[w[0]].Weak && (word == "" || w[0] == word) && follows(last, w[1]):
			word, last, of = w[0], w[1], append(of, i)
		}
	}
	if !pins || len(of) < 2 {
		return "", nil
	}
	return word, of
}

// follows reports whether one number or letter comes right behind another, the first of them behind none.
func follows(last, next string) bool {
	const counts, letters = "123456789", "abcdefgh"
	if len(next) != 1 {
		return false
	}
	for _, all := range []string{counts, letters} {
		if at := strings.Index(all, next); at >= 0 {
			return last == "" && at == 0 || at > 0 && last == all[at-1:at]
		}
	}
	return false
}

// joined is the cells of a row with those of several columns joined in the first of them, by a comma or, in the headings, to one word.
func joined(cells []string, of []int, word string) []string {
	var all []string
	for _, i := range of {
		if i < len(cells) && !value.IsNothing(cells[i]) {
			all = append(all, cells[i])
		}
	}
	if len(cells) <= of[0] {
		return cells
	}
	cells = slices.Clone(cells)
	if word != "" {
		cells[of[0]] = word
	} else if len(all) > 0 {
		cells[of[0]] = strings.Join(all, ", ")
	}
	for _, i := range of[1:] {
		if i < len(cells) {
			cells[i] = ""
		}
	}
	return cells
}
