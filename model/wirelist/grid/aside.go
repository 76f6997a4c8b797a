package grid

import (
	"strings"

	"contralay/model/wirelist/table"
)

// Where the table to the right has ended, a remark on a row of the one to the left may reach below it. It stays with its row.
//
//	pin  note  colour      pin  note  colour
//	 1   DO    red          3   MI    white
//	 2   RE    blue         4   FA    black
//	 5   com   green  <- thick one, 14 ga, to the frame

// aside is where the remark stands that is all that a row has between two columns, behind cells of the row itself; −1 where there is none.
// What stands in the first of the columns and is short is a cavity.
func aside(row table.Row, before, from, to int) int {
	at := -1
	for k := from; k < min(to, len(row.Cells)); k++ {
		if row.Cells[k] == "" {
			continue
		}
		if at >= 0 {
			return -1
		}
		at = k
	}
	if at < 0 || !isRemark(row.Cells[at]) {
		return -1
	}
	left, _ := table.Row{Cells: row.Cells[min(before, len(row.Cells)):min(from, len(row.Cells))]}.Filled()
	if left < 2 {
		return -1
	}
	return at
}

// isRemark reports whether a text points at what stands before it, or is some words in brackets.
func isRemark(text string) bool {
	for _, sign := range []string{"<", "←", "⇐", "◄", "^", "("} {
		if rest, ok := strings.CutPrefix(text, sign); ok && strings.Contains(strings.TrimLeft(rest, "-=< "), " ") {
			return true
		}
	}
	return false
}
