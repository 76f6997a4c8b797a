package printed

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// wholes takes the ".0" off the numbers of cavities, and of whatever else heads them as one, in a table that a script printed: where a
// cell of a column holds nothing, a script takes its whole numbers for others, and prints 4 as "4.0". Each cell of the column that holds
// something is such a number.
func (p *plain) wholes() {
	if !p.signs {
		return
	}
	for i, head := range p.t.Rows {
		for k, c := range head.Cells {
			switch p.known[table.Fold(c)].Field {
			case name.FieldPin, name.FieldFromPin, name.FieldToPin, name.FieldWire, name.FieldNumber, name.FieldGauge:
				p.wholesBelow(i, k)
			}
		}
	}
}

// wholesBelow does so in the column below one heading.
func (p *plain) wholesBelow(head, col int) {
	var at, rows []int
	for i, r := range p.t.Rows[head+1:] {
		if p.t.Marked && (r.Prose || r.First) {
			break
		}
		if col >= len(r.Cells) || r.Cells[col] == "" {
			continue
		}
		whole, ok := strings.CutSuffix(r.Cells[col], ".0")
		if !ok || whole == "" || strings.Trim(whole, "0123456789") != "" {
			return
		}
		at, rows = append(at, head+1+i), append(rows, r.Line)
	}
	if len(at) < 2 {
		return
	}
	for _, i := range at {
		p.set(i, col, strings.TrimSuffix(p.t.Rows[i].Cells[col], ".0"))
	}
	p.say("whole numbers with \".0\" behind them", p.t.Rows[head].Cells[col], "taken for whole numbers", rows)
}
