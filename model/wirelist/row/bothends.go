package row

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// joinsTwo reports whether a row names something at either end: it is a wire, whatever its name is.
func joinsTwo(b *shape.Block, cells []string) bool {
	says := func(fields ...name.Field) bool {
		for _, f := range fields {
			if cell := b.Cell(cells, f); !value.IsNothing(cell) && name.StateOf(cell) == name.Used {
				return true
			}
		}
		return false
	}
	return says(name.FieldFrom, name.FieldFromPin) && says(name.FieldTo, name.FieldToPin)
}

// saysOpen reports whether a cavity of the far end is a word for none: "NC" is one, but beside "NO" or "COM" it is a contact.
func saysOpen(b *shape.Block, pin string, col int) bool {
	if name.StateOf(pin) != name.Blank || len(pin) < 2 || value.IsNothing(pin) {
		return false
	}
	if len(pin) > 2 {
		return true
	}
	const looked = 400 // rows; more say nothing new (no source)
	times := 0
	for _, r := range b.Rows[:min(len(b.Rows), looked)] {
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
	return times > 1 || len(b.Rows) > 4
}
