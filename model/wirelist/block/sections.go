package block

import (
	"slices"

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
	first := ""
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
			if again, _ := b.Rows[k+1].Filled(); again < 2 || cell(b.Rows[k+1]) != first {
				return b.Rows
			}
			lone = append(lone, k)
		case name.IsDesignator(cell(r)):
			return b.Rows // its cavities are called so
		}
	}
	if len(lone) < 2 {
		return b.Rows
	}
	rows := slices.Clone(b.Rows)
	for _, k := range lone {
		rows[k].Prose = true
	}
	return rows
}
