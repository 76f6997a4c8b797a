package reading

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// grouped reads two columns of cavities below a row that names the device over each.
//
//	Dome box   |      | Motor box |      | Lead
//	Pin        | Name | Pin       | Name | Colour
//	1          | OPEN | 4         | M+   | red
func grouped(l *look) []shape.Column {
	if len(l.src.Head) != 1 || len(l.src.Titles) == 0 {
		return nil
	}
	above := l.src.Titles[len(l.src.Titles)-1]
	if n, _ := above.Filled(); n < 2 || above.Line+1 != l.src.Head[0].Line {
		return nil
	}
	var pins []int
	for i, c := range l.cols {
		if c.Field == name.FieldPin && !c.Given && l.prof[i].Filled > 0 {
			pins = append(pins, i)
		}
	}
	if len(pins) != 2 || table.Fold(l.cols[pins[0]].Head) != table.Fold(l.cols[pins[1]].Head) {
		return nil
	}
	cols := slices.Clone(l.cols)
	for k, i := range pins {
		device := ""
		if i < len(above.Cells) {
			device = above.Cells[i]
		}
		if value.IsNothing(device) {
			return nil
		}
		cols[i].Field, cols[i].Of = []name.Field{name.FieldFromPin, name.FieldToPin}[k], device
	}
	return cols
}
