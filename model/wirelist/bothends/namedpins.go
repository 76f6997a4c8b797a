package bothends

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// NamedPins takes a column whose cells are devices of one kind, beside the cavities of that kind, for the devices there: "XLR pin" is
// the pin of XLR1 in one row, and of XLR2 in another. Of two such the first is where the wires begin. endsInPin says whether a heading
// is of cavities.
//
//	SB1 pin | Core  | Tail | XLR pin
//	A       | white | XLR1 | 2
//	C       | white | XLR2 | 2
func NamedPins(cols []shape.Column, prof []column.Profile, rows []table.Row, endsInPin func(head string) bool) {
	var pins, devices []int
	other := -1
	for i, c := range cols {
		switch {
		case c.Given || isEndField(c.Field) || c.Field == name.FieldFromPin || c.Field == name.FieldToPin:
			return
		case prof[i].Filled == 0 || c.Field != name.FieldPin && (c.Field != name.FieldKeep || !endsInPin(c.Head)):
		default:
			if k := besideOfKind(cols, prof, rows, i); k >= 0 {
				pins, devices = append(pins, i), append(devices, k)
			} else if other >= 0 {
				return
			} else {
				other = i
			}
		}
	}
	ends := [][2]name.Field{{name.FieldTo, name.FieldToPin}}
	switch {
	case len(pins) == 2 && other < 0:
		ends = [][2]name.Field{{name.FieldFrom, name.FieldFromPin}, {name.FieldTo, name.FieldToPin}}
	case len(pins) != 1:
		return
	case other < 0:
		ends = [][2]name.Field{{name.FieldConnector, name.FieldPin}}
	case cols[other].Field == name.FieldKeep:
		cols[other].Field, cols[other].Of = name.FieldPin, shape.DeviceOf(cols[other].Head)
		cols[other].Know()
	}
	for n, end := range ends {
		cols[devices[n]].Field, cols[pins[n]].Field, cols[pins[n]].Of = end[0], end[1], ""
		cols[devices[n]].Know()
		cols[pins[n]].Know()
	}
}

// besideOfKind is the column beside some cavities that names the device of each, a kind that the heading of the cavities says and a number
// or a letter behind it, "XLR1", "XLR-A"; -1 where there is none.
func besideOfKind(cols []shape.Column, prof []column.Profile, rows []table.Row, pin int) int {
	kind := table.Fold(shape.DeviceOf(cols[pin].Head))
	if kind == "" {
		return -1
	}
	for _, k := range []int{pin - 1, pin + 1} {
		if k >= 0 && k < len(cols) && cols[k].Field == name.FieldKeep && !cols[k].Given && prof[k].Distinct > 1 &&
			areOfKind(rows, k, kind) && column.PairsOnce(rows, k, pin) {
			return k
		}
	}
	return -1
}

// areOfKind reports whether each cell of a column is a device of a kind.
func areOfKind(rows []table.Row, device int, kind string) bool {
	n := 0
	for _, r := range rows {
		if device >= len(r.Cells) || r.Cells[device] == "" {
			continue
		}
		rest, ok := strings.CutPrefix(table.Fold(r.Cells[device]), kind)
		if rest = strings.TrimLeft(rest, " -_.#"); !ok || !name.IsCavity(strings.ToUpper(rest)) {
			return false
		}
		n++
	}
	return n > 1
}
