package runline

import (
	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// LeadRows is how many rows from one on are the title of a lead and its lines: two or more of them say both cavities, and half of those
// that are not free do.
func LeadRows(rows []table.Row, i int) int {
	if len(rows[i].Cells) != 1 || i+2 >= len(rows) {
		return 0
	}
	if near, _ := LeadTitle(rows[i].Cells[0]); near == "" || isFirstLine(rows[i:]) {
		return 0
	}
	n, both, free, seen := 1, 0, 0, map[string]bool{}
	for i+n < len(rows) && len(rows[i+n].Cells) == 1 && rows[i+n].Level == 0 && rows[i+n].Line <= rows[i+n-1].Line+2 {
		l, ok := LeadOf(rows[i+n].Cells[0])
		if !ok || l.Pin != "" && seen[l.Pin] {
			break
		}
		if seen[l.Pin] = true; !l.Free && l.Else == "" {
			both++
		}
		if l.Free {
			free++
		}
		n++
	}
	if i+n < len(rows) && len(rows[i+n].Cells) == 1 && rows[i+n].Line == rows[i+n-1].Line+1 {
		if _, to := arrow.In(rows[i+n].Cells[0]); to > 0 {
			return 0 // pads of two boards, of which some look like cavities
		}
	}
	if both < 2 || 2*both < n-1-free {
		return 0
	}
	return n
}

// isFirstLine reports whether the first of some rows begins with a cavity and the next one with the cavity behind it: the first line of a
// plug, and no title of a lead.
//
//	1: supply -> HELM 41, red
//	2: signal -> HELM 42, blue
func isFirstLine(rows []table.Row) bool {
	first, _, ok := point.Cut(rows[0].Cells[0])
	if !ok || len(rows[1].Cells) != 1 {
		return false
	}
	next, _, ok := point.Cut(rows[1].Cells[0])
	return ok && name.Ordinal(next) == name.Ordinal(first)+1
}
