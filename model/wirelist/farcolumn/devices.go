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
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// boardAndDevices takes a column for the cavities of the board that heads it, and a column of devices with the cavities right behind it for
// the far ends, where each row has all three and a name. The ground of the board comes again, one for several wires; no other cavity does.
//
//	BRK | Signal | Drive | Terminal | Colour
//	2   | step   | X     | PUL+     | brown
//	GND | common | X     | PUL-     | green
//	4   | step   | Y     | PUL+     | brown
func boardAndDevices(cols []shape.Column, prof []column.Profile, rows []table.Row) bool {
	pin := slices.IndexFunc(cols, func(c shape.Column) bool { return c.Field == name.FieldPin })
	if pin < 1 || pin >= len(prof) || cols[pin].Given || cols[pin-1].Given || cols[pin].Of != "" ||
		cols[pin-1].Field != name.FieldConnector && cols[pin-1].Field != name.FieldKeep || prof[pin].Filled < least ||
		prof[pin-1].Distinct == prof[pin-1].Filled || prof[pin-1].Prose > 0 || !column.PairsOnce(rows, pin-1, pin) {
		return false
	}
	near, names := -1, -1
	for i := range prof {
		switch {
		case i == pin-1 || !isOpen(cols, prof, i):
		case areOfBoard(rows, i):
			if near >= 0 || prof[i].Filled != prof[pin].Filled || prof[pin-1].Filled > prof[pin].Filled {
				return false
			}
			near = i
		case names >= 0:
			return false
		default:
			names = i
		}
	}
	if near < 0 || near > pin || !namesDevice(cols, near, "") && !hasSupply(rows, near) ||
		(names >= 0) == has(cols, prof, name.FieldSignal) || names >= 0 && !areNames(&prof[names]) {
		return false
	}
	if names >= 0 {
		cols[names].Field = name.FieldSignal
	}
	cols[near].Field, cols[near].Of = name.FieldFromPin, shape.DeviceOf(cols[near].Head)
	cols[pin-1].Field, cols[pin].Field = name.FieldTo, name.FieldToPin
	return true
}

// areNames reports whether the cells of a column can be what the wires carry.
func areNames(p *column.Profile) bool {
	return p.Unique() && 2*p.Prose <= p.Filled && p.Numbers+p.Colours+p.Sized+p.Lengths+p.Currents+p.Ends == 0
}

// twoDevices takes the only two columns that nobody knows for the cavities of the two devices that head them: those of the one are numbers
// and supplies, those of the other short names in capitals, each once, and others say the names and the colours of the wires.
//
//	BRK | VFD | Function | Wire
//	16  | FWD | run      | blue
//	17  | AVI | speed    | white
//	GND | ACM | common   | black
func twoDevices(cols []shape.Column, prof []column.Profile, rows []table.Row, title string) bool {
	if has(cols, prof, name.FieldPin, name.FieldConnector, name.FieldNumber, name.FieldWire) || !has(cols, prof, name.FieldSignal) ||
		!has(cols, prof, name.FieldColour, name.FieldGauge, name.FieldCable) {
		return false
	}
	var of []int
	for i := range prof {
		if prof[i].Filled == 0 || cols[i].Field != name.FieldKeep {
			continue
		}
		if !isOpen(cols, prof, i) || !namesDevice(cols, i, title) || len(of) == 2 {
			return false
		}
		of = append(of, i)
	}
	if len(of) != 2 || prof[of[0]].Filled != prof[of[1]].Filled {
		return false
	}
	if a, b := of[0], of[1]; !(areOfBoard(rows, a) && areShortNames(rows, b)) && !(areShortNames(rows, a) && areOfBoard(rows, b)) {
		return false
	}
	for k, f := range []name.Field{name.FieldFromPin, name.FieldToPin} {
		cols[of[k]].Field, cols[of[k]].Of = f, shape.DeviceOf(cols[of[k]].Head)
	}
	return true
}

// namesDevice reports whether a heading is what a device is called: a word for one, a word of the title, or a few capitals where other
// headings have small letters, "VFD".
func namesDevice(cols []shape.Column, i int, title string) bool {
	const longest = 6 // capitals (no source)
	head := cols[i].Head
	w := headWords(head)
	if len(w) == 0 || name.IsRemark(w) || name.IsOtherHead(head) || words.IsOfValues(table.Fold(head)) ||
		words.IsNumberWord(w[0]) {
		return false
	}
	last := w[len(w)-1]
	if name.IsUnit(last) || name.IsDeviceWord(last) || slices.Contains(name.Words(table.Fold(title)), last) {
		return true
	}
	return len(w) == 1 && len(head) > 2 && len(head) <= longest && head == strings.ToUpper(head) &&
		strings.Trim(head, "0123456789") == head && !isInside(w[0]) &&
		slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Head != strings.ToUpper(c.Head) })
}

// isInside reports whether a folded word in capitals is short for something inside a device or of its papers, and for no device. Common
// practice, no source.
func isInside(w string) bool {
	return slices.Contains([]string{"gpio", "port", "adc", "dac", "pwm", "net", "bcm", "spn", "pgn", "dma", "uart", "spi", "iic", "can",
		"lin", "usb", "alias", "dwg", "bom", "rev", "grid", "loc", "pos"}, w)
}

// hasSupply reports whether a cell of a column is a supply or a ground.
func hasSupply(rows []table.Row, i int) bool {
	return !cells(rows, i, func(cell string) bool { return !pads.IsSupply(cell) })
}

// areOfBoard reports whether the cells of a column are cavities, each once, and supplies, which come again.
func areOfBoard(rows []table.Row, i int) bool {
	seen := map[string]bool{}
	return cells(rows, i, func(cell string) bool {
		if pads.IsSupply(cell) {
			return true
		}
		again := seen[cell]
		seen[cell] = true
		return !again && (name.IsCavity(cell) || arrow.IsPad(cell) || pads.IsChipPad(cell))
	}) && len(seen) > 1
}

// areShortNames reports whether the cells of a column are short names in capitals, each once.
func areShortNames(rows []table.Row, i int) bool {
	const longest = 6 // bytes (no source)
	seen := map[string]bool{}
	return cells(rows, i, func(cell string) bool {
		again := seen[cell]
		seen[cell] = true
		_, hue := value.ParseColour(cell, "")
		return !again && !hue && !pads.IsChipPad(cell) && len(cell) <= longest && cell == strings.ToUpper(cell) &&
			!strings.Contains(cell, " ") && value.IsLetter(cell[0]) && name.StateOf(cell) == name.Used
	}) && len(seen) > 1
}
