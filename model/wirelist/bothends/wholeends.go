package bothends

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// WholeEnds keeps what stands beside ends that say their cavities themselves: the same device comes again with another number, hardly one
// end comes twice, and the heading is no plain word for cavities.
//
//	From  | Terminal 1 | To    | Terminal 2      From  | Strip | To    | Strip
//	ECU-7 | M20        | Fan-3 | R516            ECU-7 | 5     | Fan-3 | 7
//	ECU-8 | M20        | Fan-2 | M18             ECU-8 | 5     | Fan-2 | 7
func WholeEnds(cols []shape.Column, rows []table.Row) {
	for _, side := range []name.Field{name.FieldFrom, name.FieldTo} {
		end := slices.IndexFunc(cols, func(c shape.Column) bool { return c.Field == side })
		if end < 0 || !areWholeEnds(rows, end) {
			continue
		}
		for i := range cols {
			if c := &cols[i]; c.Field == side+" pin" && !c.Given && !isPlainPin(c.Head) {
				c.Field, c.Spared = name.FieldKeep, true
			}
		}
	}
}

// areWholeEnds reports whether most cells of a column are a device and a cavity, hardly one of them twice, and the device of some comes
// again.
func areWholeEnds(rows []table.Row, i int) bool {
	n, whole := 0, 0
	cells, devices, most := map[string]bool{}, map[string]int{}, map[string]int{} // how many places each has, and the highest
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if i >= len(r.Cells) || r.Cells[i] == "" || shape.IsText(r) {
			continue
		}
		n++
		of, pin, ok := name.SplitEnd(r.Cells[i])
		if ok = ok && name.IsCavity(pin); ok {
			whole++
		}
		if ok && !cells[r.Cells[i]] {
			devices[of]++
			at, err := strconv.Atoi(pin)
			if err != nil {
				at = math.MaxInt // a letter counts no devices
			}
			most[of] = max(most[of], at)
		}
		cells[r.Cells[i]] = true
	}
	again, counted := 0, true // "K-1", "K-2" and "K-3" are counted
	for of, k := range devices {
		if k > 1 {
			again += k
			counted = counted && most[of] <= k
		}
	}
	return whole > 2 && 4*whole >= 3*n && 4*len(cells) >= 3*n && 2*again >= whole && !counted
}

// isPlainPin reports whether a heading is a word for cavities that is for nothing else, with that of its side or none.
func isPlainPin(head string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(head)), func(w string) bool {
		switch strings.TrimSuffix(w, "s") {
		case "pin", "cavity", "cav", "way", "kammer", "broche", "voie", "stift", "pinnr":
			return true
		}
		return false
	})
}

// TerminalsBesidePins keeps the columns of terminals or contacts of both ends where each end has a column of pins right behind it: they are
// crimped on.
//
//	From | Pin | Terminal 1 | To  | Pin | Terminal 2
//	ECU  | 7   | M20        | Fan | 3   | R516
func TerminalsBesidePins(cols []shape.Column) {
	var pins []int
	for i, c := range cols {
		if i > 0 && isPlainPin(c.Head) && !c.Given && (cols[i-1].Field == name.FieldFrom || cols[i-1].Field == name.FieldTo) {
			pins = append(pins, i)
		}
	}
	if len(pins) != 2 || cols[pins[0]-1].Field == cols[pins[1]-1].Field {
		return
	}
	found := false
	for i := range cols {
		c := &cols[i]
		if (c.Field == name.FieldFromPin || c.Field == name.FieldToPin) && !isPlainPin(c.Head) && headsTerminal(c.Head) && !c.Given {
			c.Field, c.Spared, found = name.FieldKeep, true, true
		}
	}
	if !found {
		return
	}
	for _, i := range pins {
		cols[i].Field = cols[i-1].Field + " pin"
		cols[i].Know()
	}
}
