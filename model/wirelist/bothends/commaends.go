package bothends

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// CommaEnds takes a column that nobody knows for the far ends of the cavities of a plug, where its heading ends in a word for a cavity
// behind a comma and each of its cells is a device, a comma and its cavity.
//
//	Pin | Signal | Mating part, pin
//	1   | +24 V  | PSU, 1
func CommaEnds(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	at := -1
	for i, c := range cols {
		switch {
		case i >= len(prof) || prof[i].Filled == 0:
		case c.Field == name.FieldTo || c.Field == name.FieldToPin || c.Field == name.FieldFrom || c.Field == name.FieldRun:
			return
		case c.Field == name.FieldKeep && !c.Given && at < 0 && headsCommaEnds(c.Head) && areCommaEnds(rows, i):
			at = i
		}
	}
	if at >= 0 {
		cols[at].Field = name.FieldTo
	}
}

func headsCommaEnds(head string) bool {
	of, pin, ok := strings.Cut(head, ",")
	return ok && strings.TrimSpace(of) != "" && name.IsPinWord(table.Fold(strings.TrimSpace(pin)))
}

// areCommaEnds reports whether the cells of a column are such ends, two or more.
func areCommaEnds(rows []table.Row, i int) bool {
	n := 0
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if i >= len(r.Cells) || strings.Trim(r.Cells[i], "-– ") == "" || shape.IsText(r) {
			continue
		}
		of, pin, ok := strings.Cut(r.Cells[i], ",")
		if !ok || strings.TrimSpace(of) == "" || !name.IsCavity(strings.TrimSpace(pin)) {
			return false
		}
		n++
	}
	return n > 1
}
