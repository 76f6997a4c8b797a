package reading

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// numbered finds columns of cavities whose cells say the number and the name of each.
//
//	Pin gauge | Hub pin
//	1 GND     | hub-gnd (6)
//	2 VCC     | hub-3v3 (1)
func (l *look) numbered() {
	for i := range l.cols {
		c := &l.cols[i]
		if !slices.Contains([]name.Field{name.FieldPin, name.FieldFromPin, name.FieldToPin}, c.Field) || c.Given {
			continue
		}
		n, of := 0, 0
		seen := map[string]bool{}
		for _, r := range l.src.Rows[:min(len(l.src.Rows), column.MostLooked)] {
			if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) || name.StateOf(r.Cells[i]) != name.Used {
				continue
			}
			of++
			if pin, called, _ := name.NumberedPin(r.Cells[i]); pin != "" && !seen[pin] && called != "" {
				seen[pin] = true
				n++
			}
		}
		c.Numbered = n > 2 && 4*n >= 3*of
	}
}
