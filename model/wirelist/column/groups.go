package column

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// AllParted reports whether every cell of a column is a designator, a dash or a full stop, and a cavity: "X1-4". Where a
// title names a connector such a cell is a cavity of it.
func AllParted(rows []table.Row, i int) bool {
	n := 0
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i >= len(r.Cells) || r.Cells[i] == "" || value.IsDots(r.Cells[i]) || shape.IsText(r) || signoff.IsTotal(r.Cells[i]) {
			continue
		}
		connector, pin, ok := name.SplitEnd(r.Cells[i])
		if !ok || !name.IsDesignator(connector) || !name.IsCavity(pin) {
			return false
		}
		n++
	}
	return n > 1
}

// StartsGroups reports whether each cell of a column is a designator, "-X1", the first row has one, and others have none: the
// connector is written once for its rows.
func StartsGroups(rows []table.Row, prof []Profile, i int) bool {
	n, first := 0, true
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if shape.IsText(r) {
			continue
		}
		cell := ""
		if i < len(r.Cells) {
			cell = r.Cells[i]
		}
		if cell == "" && first || cell != "" && !name.IsDesignator(strings.TrimLeft(cell, "-=+")) {
			return false
		}
		if first = false; cell != "" {
			n++
		}
	}
	return n > 0 && (n < prof[i+1].Filled || 2*prof[i].Distinct <= n)
}
