package pads

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// SaysOpen reports whether a cavity of the far end is a word for none: "NC" is one, but beside "NO" or "COM" it is a contact.
func SaysOpen(rows []table.Row, pin string, col int) bool {
	if name.StateOf(pin) != name.Blank || len(pin) < 2 || value.IsNothing(pin) {
		return false
	}
	if len(pin) > 2 {
		return true
	}
	times := 0
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if col >= len(r.Cells) {
			continue
		}
		switch cell := strings.ToUpper(r.Cells[col]); cell {
		case "NO", "COM", "C":
			return false
		case strings.ToUpper(pin):
			times++
		}
	}
	return times > 1 || len(rows) > 4
}
