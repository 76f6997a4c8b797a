package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// sections takes the rows of a table of cavities that hold nothing but a designator for the titles of those below them, where each of
// them counts its cavities from the first again.
//
//	Terminal | Tag  | Device
//	X1       |      |
//	1        | 24P  | Valve
//	2        | 0V   | Valve
//	X2       |      |
//	1        | T1   | Probe
func sections(h shape.Headings, b *Block) []table.Row {
	if len(b.Head) == 0 || len(b.Rows) < 4 {
		return b.Rows
	}
	pin := h.PinColumn(b.Head[len(b.Head)-1])
	if pin < 0 {
		return b.Rows
	}
	cell := func(r table.Row) string {
		if pin < len(r.Cells) {
			return r.Cells[pin]
		}
		return ""
	}
	var lone []int
	first, texts := "", 0
	rows := map[string]bool{} // the letters that cavities begin with
	for k, r := range b.Rows {
		n, text := r.Filled()
		switch {
		case n == 1 && name.IsDesignator(text) && len(text) < 6:
			if k+1 >= len(b.Rows) || cell(b.Rows[k+1]) == "" {
				return b.Rows
			}
			if first == "" {
				first = cell(b.Rows[k+1])
			}
			if again, _ := b.Rows[k+1].Filled(); again < 2 || cell(b.Rows[k+1]) != first && !beginsCount(cell(b.Rows[k+1])) {
				return b.Rows
			}
			lone = append(lone, k)
		case n == 1 && shape.IsText(r):
			texts++
		case name.IsDesignator(cell(r)):
			rows[letters(cell(r))] = true
		}
	}
	if len(lone) == 0 || len(lone)+texts < 2 || slices.ContainsFunc(lone, func(k int) bool {
		_, text := b.Rows[k].Filled()
		return rows[letters(text)] // cavities are called so
	}) {
		return b.Rows
	}
	out := slices.Clone(b.Rows)
	for _, k := range lone {
		out[k].Prose = true
	}
	return out
}

// beginsCount reports whether a cavity is the first of its connector, as most are named.
func beginsCount(pin string) bool {
	switch strings.ToUpper(strings.TrimLeft(pin, "#")) {
	case "1", "01", "001", "A", "A1", "A01", "1A", "A-1":
		return true
	}
	return false
}

// letters is a designator without its number.
func letters(designator string) string { return strings.TrimRight(designator, "0123456789") }
