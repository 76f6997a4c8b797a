package column

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// EndTexts finds two columns beside each other whose cells are the ends of wires in plain words, a device and behind it what it
// calls the place: most of the devices come again, in the one column or in the other. −1 where there are none.
//
//	battery +     | main fuse in
//	main fuse out | contactor A1
//	contactor A2  | motor +
func EndTexts(rows []table.Row, wide int) (from int) {
	for i := 0; i+1 < wide; i++ {
		devices, rest, filled := map[string]int{}, 0, 0
		for _, r := range rows[:min(len(rows), MostLooked)] {
			if shape.IsText(r) {
				continue
			}
			for k := i; k <= i+1; k++ {
				if k >= len(r.Cells) || value.IsNothing(r.Cells[k]) {
					continue
				}
				filled++
				if d := deviceOf(r.Cells[k]); d != "" {
					devices[d]++
				} else {
					rest++
				}
			}
		}
		again := 0
		for _, n := range devices {
			if n > 1 {
				again += n
			}
		}
		if filled > 7 && 10*rest <= filled && 3*again >= 2*filled {
			return i
		}
	}
	return -1
}

// deviceOf is the folded words of a cell before the last, which is short or a number; "" where the cell is no such text, or a
// colour or a size.
func deviceOf(cell string) string {
	const longest = 4 // letters of what a device calls a place (no source)
	all := strings.Fields(table.Fold(cell))
	if len(all) < 2 || len(all) > 5 || len(all[len(all)-1]) > longest || name.StateOf(cell) != name.Used {
		return ""
	}
	if _, ok := value.ParseColour(cell, ""); ok || value.SizeWithin(cell, value.MarkUnknown) != "" {
		return ""
	}
	return strings.Join(all[:len(all)-1], " ")
}

// IsSizes reports whether a column of numbers alone is of sizes of wire, beside a column of colours: few of them, each one that there is,
// or each a cross section with decimals.
func IsSizes(rows []table.Row, i int) bool {
	seen, n, sections := map[string]bool{}, 0, 0
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		if _, ok := value.ParseGauge(r.Cells[i], value.BareAWG, value.MarkUnknown); !ok {
			return false
		}
		if value.IsSection(r.Cells[i]) {
			sections++
		}
		seen[r.Cells[i]] = true
		n++
	}
	return n > 2 && (2*len(seen) <= n+1 || sections == n)
}
