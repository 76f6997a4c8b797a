package pinlines

import (
	"regexp"
	"slices"
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// braceCell is a cell at the end of a row that holds it together with the one above or below, with what is said of both or without.
var braceCell = regexp.MustCompile(`^(?:─*([\\/})\]┐┘┤╮╯┑┙┥]))[_─-]*(?:\s*(\pL.*))?$`)

// Braced says of each two rows below headings that a brace in their last cells holds together what stands beside the brace.
//
//	pin | function | colour |
//	3   | crank +  | white  | }
//	4   | crank -  | black  | } twisted
func Braced(t *table.Table) []table.Row {
	rows, own := t.Rows, false
	for i := 0; i < len(rows); {
		var two []*line
		for k := i; k < len(rows) && (k == i || rows[k].Line == rows[k-1].Line+1); k++ {
			l := braceOf(rows[k])
			if l == nil || k > i && l.row != two[0].row {
				break
			}
			two = append(two, l)
		}
		n := 0
		if len(two) > 1 {
			n = held(two)
		}
		if text := textOf(two[:n]); n == 2 && text != "" {
			if !own {
				rows, own = slices.Clone(rows), true
			}
			for k := i; k < i+2; k++ {
				rows[k].Cells = slices.Clone(rows[k].Cells)
				rows[k].Cells[two[0].row] = text
			}
		}
		i += max(n, 1)
	}
	return rows
}

// braceOf is the brace in the last cell of a row, whose number is the row of the line; nil for none.
func braceOf(r table.Row) *line {
	last := len(r.Cells) - 1
	for last > 0 && r.Cells[last] == "" {
		last--
	}
	if last < 2 {
		return nil
	}
	if c := r.Cells[last]; value.IsDigit(c[0]) || c[0] >= 'A' && c[0] <= 'Z' || c[0] >= 'a' && c[0] <= 'z' {
		return nil // most rows
	}
	m := braceCell.FindStringSubmatch(r.Cells[last])
	if m == nil {
		return nil
	}
	return &line{brace: m[1], braced: m[2], row: last}
}

// textOf is what is said of two rows: where they are twisted, that they are a pair.
func textOf(of []*line) string {
	text := ""
	for _, l := range of {
		if text = strings.TrimSpace(text + " " + l.braced); l.braced != "" && text != l.braced {
			return ""
		}
	}
	if at := twists.FindStringIndex(text); at != nil && !strings.Contains(strings.ToLower(text), "pair") {
		end := endOfWord(text, at[0])
		return text[:end] + " pair" + text[end:]
	}
	return text
}

// endOfWord is where the word ends that begins at a place.
func endOfWord(text string, at int) int {
	if n := strings.IndexAny(text[at:], " ,;"); n >= 0 {
		return at + n
	}
	return len(text)
}
