package farcolumn

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// padsOfHeading takes a column of ends for the pads of a device that the title names, where the other column of ends has the cavities of
// the other device that it names, and nothing but the title says what the pads are of.
//
//	Strip X1 -> controller
//	From | To  | Signal
//	X1.3 | D2  | wind
//	X1.6 | A0  | vane
//	X1.2 | GND | ground
func padsOfHeading(cols []shape.Column, prof []column.Profile, rows []table.Row, title string) {
	if title == "" || has(cols, prof, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldVia, name.FieldDevicePin,
		name.FieldPin, name.FieldConnector) {
		return
	}
	find := func(f name.Field) int {
		return slices.IndexFunc(cols, func(c shape.Column) bool { return c.Field == f && !c.Given })
	}
	from, to := find(name.FieldFrom), find(name.FieldTo)
	if from < 0 || to < 0 || max(from, to) >= len(prof) {
		return
	}
	near, far := arrow.HeadingDevices(title)
	if near == "" {
		return
	}
	switch {
	case areEndsOf(rows, from, near) && areBoardPads(rows, to):
		cols[to].Field, cols[to].Of = name.FieldToPin, far
	case areEndsOf(rows, to, far) && areBoardPads(rows, from):
		cols[from].Field, cols[from].Of = name.FieldFromPin, near
	}
}

// areEndsOf reports whether the cells of a column are cavities of a connector that some words name.
func areEndsOf(rows []table.Row, i int, of string) bool {
	w := name.Words(table.Fold(of))
	n := 0
	return cells(rows, i, func(cell string) bool {
		n++
		connector, pin, ok := name.SplitEnd(cell)
		return ok && name.IsCavity(pin) && slices.Contains(w, table.Fold(connector))
	}) && n > 1
}

// areBoardPads reports whether the cells of a column are the pads of a board: the digital and analogue ones with their number, each once,
// and one or more that boards have printed on them, a supply or a bus: "D1", "D2" alone are devices.
func areBoardPads(rows []table.Row, i int) bool {
	seen, printed := map[string]bool{}, 0
	return cells(rows, i, func(cell string) bool {
		again := seen[cell] && !pads.IsSupply(cell)
		seen[cell] = true
		if arrow.IsPad(cell) || pads.IsChipPad(cell) {
			printed++
			return !again
		}
		return !again && name.IsCavity(cell) && len(cell) > 1 && strings.ContainsRune("DA", rune(cell[0]))
	}) && len(seen) > 1 && printed > 0
}
