package column

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// A board and its pad stand in two columns, of which the first alone has a heading.
//
//	Panel | Pin | Switch | Board |    | Wire
//	Roof  | 1   | Master | IO-A  | D2 | green
//	Roof  | 2   | Strobe | IO-A  | D3 | blue
//	Roof  | 3   | Return | IO-B  | D2 | black

// UnheadedPins takes a column without heading right behind the devices of an end for their cavities, where the end has none: each cell is
// one short word beside a device, most have a digit, some device has several, and hardly one of them comes twice in a device.
func UnheadedPins(cols []shape.Column, prof []Profile, rows []table.Row) {
	for i := 1; i < len(cols); i++ {
		c, p := &cols[i], &prof[i]
		if c.Head != "" || c.Field != name.FieldKeep || c.Given || p.Filled < 2 || p.Colours > 0 || p.Units > 0 || p.Prose > 0 {
			continue
		}
		var of name.Field
		switch cols[i-1].Field {
		case name.FieldTo:
			of = name.FieldToPin
		case name.FieldFrom:
			of = name.FieldFromPin
		default:
			continue
		}
		for k := range cols {
			if cols[k].Field == of {
				return
			}
		}
		if q := &prof[i-1]; q.Distinct < q.Filled && 4*p.Filled >= 3*q.Filled && arePadsOf(rows, i) {
			c.Field = of
		}
	}
}

// arePadsOf reports whether the cells of a column are short words, most of them with a digit, each beside a device in the column before it,
// and one in ten at the most comes again in its device.
func arePadsOf(rows []table.Row, i int) bool {
	const longest = 8 // bytes of the name of a pad (no source)
	seen, device, n, again, digits := map[string]bool{}, "", 0, 0, 0
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if shape.IsText(r) || !holds(r, i) || value.IsNothing(r.Cells[i]) {
			continue
		}
		cell := r.Cells[i]
		if !holds(r, i-1) || len(cell) > longest || strings.ContainsAny(cell, " ,;") || name.StateOf(cell) != name.Used {
			return false
		}
		if !value.IsDitto(r.Cells[i-1]) {
			device = table.Fold(r.Cells[i-1])
		}
		key := device + "\x00" + table.Fold(cell)
		if n++; seen[key] {
			again++
		}
		seen[key] = true
		if value.HasDigit(cell) {
			digits++
		}
	}
	return n > 1 && 2*digits > n && 10*again <= n
}
