package titled

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Rows are the rows of a sheet, in which the designator of a connector and what it is, in two cells right above headings, are one text.
//
//	C1  | 12-way plug, dash side
//	Pin | Signal | Colour
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if t.Marked || h.HeadLine() > 0 || h.Numbered() {
		return t.Rows
	}
	rows := t.Rows
	change := func(i int, text string) {
		if &rows[0] == &t.Rows[0] {
			rows = slices.Clone(rows)
		}
		rows[i].Cells = []string{text}
	}
	for i := range max(0, len(rows)-1) { // what a row says is asked before whether the next is headings, which takes longer
		text := inPairs(rows[i])
		if text == "" {
			text = inThree(h, rows[i])
		}
		if text == "" {
			if of, at, n := cablePairs(h, rows[i:]); n > 0 {
				for k := i; k < i+n; k++ {
					change(k, shape.RowText(rows[k].Cells))
					rows[k].Prose, rows[k].Taken = k != i+at, k != i+at
				}
				change(i+at, of)
				continue
			}
		}
		keys, headed := 0, false
		if text != "" && !h.IsHead(rows[i]) {
			keys, headed = headBelow(h, rows[i+1:])
		}
		switch below := rows[i+1]; {
		case headed:
		case !isTitle(rows[i], true) || !isTitle(rows[i], isOfOne(h, below)) || !isHead(h, below) ||
			i > 0 && rows[i].Line == rows[i-1].Line+1 && !shape.IsText(rows[i-1]):
			continue
		default:
			text = rows[i].Cells[0] + " " + rows[i].Cells[1]
		}
		change(i, text)
		for k := i + 1; k <= i+keys; k++ {
			change(k, strings.Join(slices.DeleteFunc(slices.Clone(rows[k].Cells), func(c string) bool { return c == "" }), " "))
		}
	}
	amongPins(h, rows, func(i int, text string) {
		change(i, text)
		rows[i].Prose = true
	})
	return rows
}

// isTitle reports whether a row has a designator in its first cell, and beside it, in its last, words that are none; one is where a
// single word is enough.
func isTitle(r table.Row, one bool) bool {
	if n, _ := r.Filled(); n != 2 || len(r.Cells) < 2 || r.Cells[0] == "" || r.Cells[1] == "" {
		return false
	}
	what := strings.Fields(r.Cells[1])
	return name.IsDesignator(r.Cells[0]) && !name.IsDesignator(what[0]) &&
		(one || len(what) > 1 || name.IsConnectorWord(table.Fold(what[0])))
}

// isOfOne reports whether headings are of the cavities of one connector, in the first column: "Motor" above a second column of cavities,
// or above the far ends, is another device.
func isOfOne(h shape.Headings, r table.Row) bool {
	return len(r.Cells) > 2 && h.PinColumn(r) == 0 && !h.HasSides(table.Row{Cells: r.Cells[1:2]}) &&
		h.PinColumn(table.Row{Cells: r.Cells[1:]}) < 0
}

// isHead reports whether a row is headings of one table, of which no two are alike.
func isHead(h shape.Headings, r table.Row) bool {
	seen := map[string]bool{}
	for _, c := range r.Cells {
		if c != "" && seen[table.Fold(c)] {
			return false
		}
		seen[table.Fold(c)] = true
	}
	return h.IsHead(r)
}
