package column

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// ArePlainPins reports whether a column is headed by the plain word for pins and the heading of the column before it, and no cell of that
// one has a cavity of its own: names of pins that come twice, or have no figure, are pins.
//
//	From | From pin | To    | To pin
//	Hub  | 4        | Gauge | BEAT
//	Hub  | 7        | Gauge | LIFT
//	Hub  | 9        | Gauge | LIFT
func ArePlainPins(rows []table.Row, before, head string, pins int) bool {
	end, of, w := pins-1, name.Words(table.Fold(before)), name.Words(table.Fold(head))
	if end < 0 || len(of) == 0 || len(w) < 2 || w[0] != of[0] || !slices.Contains(w[1:], "pin") {
		return false
	}
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if end >= len(r.Cells) || pins >= len(r.Cells) || r.Cells[pins] == "" {
			continue
		}
		if _, _, full := name.SplitEnd(r.Cells[end]); full || r.Cells[end] == "" || strings.Contains(r.Cells[pins], " ") {
			return false
		}
	}
	return true
}
