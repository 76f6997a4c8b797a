package tail

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Below the cavities of a connector may stand numbered steps, in the same columns, that are no cavities of another one.
//
//	Pin | Signal | Wire    | Goes to
//	1   | CUTOFF | red 26  | RV1
//	2   | GLIDE  | blue 26 | RV4
//
//	TRIM ORDER
//	1   | OFFSET | after a warm up
//	2   | GLIDE  | by ear, slowly

// Steps is how many rows from one on are such steps: they stand below a title behind a gap, which names no connector, and have words where
// the rows of the table above have colours and sizes.
func Steps(rows []table.Row, i int, above []table.Row, isHead func(i int) bool) (n int) {
	if i < 2 || shape.IsText(rows[i]) || !shape.IsText(rows[i-1]) || rows[i-1].Line == rows[i-2].Line+1 {
		return 0
	}
	_, title := rows[i-1].Filled()
	if first, _, _ := strings.Cut(title, " "); name.SaysConnector(title) || name.IsDesignator(strings.TrimRight(first, ":,")) {
		return 0
	}
	for n = 0; i+n < len(rows) && (n == 0 || rows[i+n].Line == rows[i+n-1].Line+1) && !shape.IsText(rows[i+n]); n++ {
		if isHead(i + n) {
			return 0
		}
	}
	if !haveNoValues(above, rows[i:i+n]) {
		return 0
	}
	return n
}

// haveNoValues reports whether some rows below a table have a few words each in a column whose cells above are colours and sizes of wires.
func haveNoValues(above, below []table.Row) bool {
	if len(below) < 2 {
		return false
	}
	for i := range below[0].Cells {
		filled, read := 0, 0
		for _, r := range above {
			if c := cellOf(r, i); c != "" && !shape.IsText(r) {
				if filled++; isValue(c) {
					read++
				}
			}
		}
		words := 0
		for _, r := range below {
			if c := cellOf(r, i); strings.Contains(c, " ") && !isValue(c) {
				words++
			} else {
				break
			}
		}
		if read > 1 && 4*read >= 3*filled && words == len(below) {
			return true
		}
	}
	return false
}

// cellOf is a cell that says something.
func cellOf(r table.Row, i int) string {
	if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || name.StateOf(r.Cells[i]) != name.Used {
		return ""
	}
	return r.Cells[i]
}

// isValue reports whether a cell has the colour or the size of a wire in it.
func isValue(cell string) bool {
	if value.SizeWithin(cell, value.MarkUnknown) != "" {
		return true
	}
	for _, lang := range []string{"", "de", "fr", "es", "it"} {
		if strings.Trim(cell, "0123456789") == "" {
			return false
		}
		if _, ok := value.ColourAndMore(cell, lang); ok {
			return true
		}
		if _, ok := value.ParseColour(cell, lang); ok {
			return true
		}
		if _, ok := value.SizeAndColour(cell, value.BareAWG, lang, value.MarkUnknown); ok {
			return true
		}
	}
	return false
}
