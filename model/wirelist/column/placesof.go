package column

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// HasOtherPlaces reports whether an end is a place of a device, "Panel 9", of which other rows of a list of both ends have other places,
// two or more, with something beside them.
func HasOtherPlaces(b *shape.Block, device, pin string) bool {
	device, pin = table.Fold(device), table.Fold(pin)
	end := device + "\x00" + pin
	if at := strings.LastIndexByte(device, ' '); pin == "" && at > 0 {
		device, pin = device[:at], device[at+1:]
	}
	if !name.IsCavity(pin) {
		return false
	}
	others := 0
	for _, r := range b.Rows[:min(len(b.Rows), MostLooked)] {
		if n, _ := r.Filled(); n < 4 || shape.IsText(r) {
			continue
		}
		for _, f := range []name.Field{name.FieldFrom, name.FieldTo} {
			cell, p := table.Fold(b.Cell(r.Cells, f)), table.Fold(b.Cell(r.Cells, f+" pin"))
			if f == name.FieldFrom && p == "" {
				p = table.Fold(b.Cell(r.Cells, name.FieldPin))
			}
			if strings.HasPrefix(cell, device) && cell+"\x00"+p != end {
				others++
			}
		}
	}
	return others > 1
}
