package arrow

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// FarPads reports whether the cells of a column are marks of pads, some of which are no supply, and nothing else.
func FarPads(rows []table.Row, i int) bool {
	n, known, others := 0, 0, 0 // others are those that are no supply: "12V", "GND" may be a rail
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		cell := strings.TrimSpace(r.Cells[i])
		n++
		switch {
		case IsPad(cell), pads.IsChipPad(cell):
			known++
			if f := table.Fold(cell); !pads.IsSupply(cell) && !strings.HasSuffix(f, "v") {
				others++
			}
		case name.IsCavity(cell):
			others++
		case !(len(cell) < 6 && (strings.HasSuffix(cell, "+") || strings.HasSuffix(cell, "-"))):
			return false
		}
	}
	return n > 2 && 3*known >= n && others > 1
}

// NumberedPads reports whether the cells of a column that are no supply are pads with a number, "GPIO22", "D4", "17": two of them, and
// more than those without.
func NumberedPads(rows []table.Row, i int) bool {
	numbered, others := 0, 0
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		switch cell := strings.TrimSpace(r.Cells[i]); {
		case pads.IsSupply(cell) || strings.HasSuffix(table.Fold(cell), "v"):
		case pads.IsChipPad(cell), name.IsCavity(cell) && strings.ContainsAny(cell, "0123456789"):
			numbered++
		default:
			others++
		}
	}
	return numbered > 1 && numbered > others
}
