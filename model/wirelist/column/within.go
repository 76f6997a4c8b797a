package column

import (
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// What the cells of a column are beside those of another.

// PlacesWithin reports whether the cells of a column are places of the devices in another: some device has several, and none has one
// twice. A device is written once for its rows, comes again, or has a mark for itself in the rows below.
func PlacesWithin(rows []table.Row, devices, i int) bool {
	device, several := "", false
	seen, n := map[string]bool{}, map[string]int{}
	for _, r := range rows {
		if shape.IsText(r) || !holds(r, i) {
			continue
		}
		if holds(r, devices) && !value.IsDitto(r.Cells[devices]) {
			device = table.Fold(r.Cells[devices])
		}
		key := device + "\x00" + r.Cells[i]
		if seen[key] {
			return false
		}
		seen[key] = true
		n[device]++
		several = several || n[device] > 1
	}
	return several
}

// FilledAlike reports whether two columns hold something in the same rows.
func FilledAlike(rows []table.Row, i, k int) bool {
	for _, r := range rows {
		if !shape.IsText(r) && holds(r, i) != holds(r, k) {
			return false
		}
	}
	return true
}

// Texts counts the rows with anything in a column: a dash below cavities is the minus pole as well.
func Texts(rows []table.Row, i int) (n int) {
	for _, r := range rows {
		if holds(r, i) && !shape.IsText(r) {
			n++
		}
	}
	return n
}

// StartsFilled reports whether the first row of data has something in a column.
func StartsFilled(rows []table.Row, i int) bool {
	for _, r := range rows {
		if !shape.IsText(r) {
			return i < len(r.Cells) && r.Cells[i] != ""
		}
	}
	return false
}

// holds reports whether a row has anything in a column.
func holds(r table.Row, i int) bool { return i < len(r.Cells) && strings.TrimSpace(r.Cells[i]) != "" }
