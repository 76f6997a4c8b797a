package atplaces

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// A title may name both places, and each line below it a pad of the one, the colour of its wire in brackets and a terminal of the other.
//
//	Encoder to drive:
//	  A    (green)    -> terminal 11
//	  A/   (yellow)   -> terminal 12
//	  0V   (white)    -> terminal 16

// Below are the rows of a sheet, those of such lines in columns for both ends.
func Below(h shape.Headings, t *table.Table) []table.Row {
	rows := t.Rows
	if h.HeadLine() > 0 || h.Numbered() || h.Recipe != nil {
		return rows
	}
	for i := 0; i+leastRows < len(rows); i++ {
		if len(rows[i+1].Cells) != 3 || len(rows[i].Cells) != 1 {
			continue
		}
		near, far := arrow.TwoDevices(strings.TrimRight(rows[i].Cells[0], ": "))
		if near == "" || far == "" {
			continue
		}
		made := []table.Row{{Line: rows[i+1].Line, Cells: []string{"From", "From pin", "To", "To pin", "Colour"}, First: true, Made: true,
			Ruled: t.Marked}}
		end := i + 1
		for ; end < len(rows) && rows[end].Line == rows[end-1].Line+1; end++ {
			cells := padOf(rows[end].Cells)
			if cells == nil {
				break
			}
			r := rows[end]
			r.Cells, r.Prose = []string{near, cells[0], far, cells[2], cells[1]}, false
			made = append(made, r)
		}
		if len(made) <= leastRows || end < len(rows) && rows[end].Line == rows[end-1].Line+1 {
			continue
		}
		rows = slices.Concat(rows[:i+1], made, rows[end:])
		i += len(made)
	}
	return rows
}

// padOf is a pad, a colour and a terminal without the brackets of the one and the word before the other; nil where a row is anything else.
func padOf(cells []string) []string {
	if len(cells) != 3 || !isBarePin(cells[0]) || cells[0] == "" {
		return nil
	}
	colour := strings.Trim(cells[1], "()")
	if cells[1] != "("+colour+")" || !isColour(colour) {
		return nil
	}
	pin := name.WithoutPinWord(cells[2])
	if pin == cells[2] || !name.IsCavity(pin) {
		return nil
	}
	return []string{cells[0], colour, pin}
}
