package column

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// ArePlaces reports whether the cells of a column are places of a few devices: each cell once, a device and a short name or number
// behind it, and most devices come again.
//
//	Box 1
//	Box 2
//	Rear lamp A
//	Rear lamp B
func ArePlaces(rows []table.Row, i int) bool {
	const least = 4 // cells (no source)
	devices, seen, filled := map[string]int{}, map[string]bool{}, 0
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) || name.StateOf(r.Cells[i]) != name.Used {
			continue
		}
		d := deviceOf(r.Cells[i])
		if connector, pin, ok := name.SplitEnd(r.Cells[i]); d == "" && ok && name.IsDesignator(connector) && name.IsCavity(pin) {
			d = table.Fold(connector) // "X3/1"
		}
		cell := table.Fold(r.Cells[i])
		if d == "" || seen[cell] {
			return false
		}
		seen[cell] = true
		devices[d]++
		filled++
	}
	again := 0
	for _, n := range devices {
		if n > 1 {
			again += n
		}
	}
	return filled >= least && 3*again >= 2*filled
}
