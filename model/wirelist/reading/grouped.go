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
	if len(l.Src.Head) != 1 || len(l.Src.Titles) == 0 {
		return nil
	}
	above := l.Src.Titles[len(l.Src.Titles)-1]
	if n, _ := above.Filled(); n < 2 || above.Line+1 != l.Src.Head[0].Line {
		return nil
	}
	var pins []int
	for i, c := range l.Cols {
		if c.Field == name.FieldPin && !c.Given && l.Prof[i].Filled > 0 {
			pins = append(pins, i)
		}
	}
	if len(pins) != 2 || table.Fold(l.Cols[pins[0]].Head) != table.Fold(l.Cols[pins[1]].Head) {
		return nil
	}
	cols := slices.Clone(l.Cols)
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
