package thingpins

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// Names takes a column that is headed as a thing for the names of the wires, where the list has no others and says both ends in columns
// of their own: what the input of a box is from is what its wire is called. Numbers and marks stand in the other columns that nobody
// knows.
//
//	In | Pin | Switch   | Active | From         | From pin
//	1  | 21  | Ignition | high   | SWITCH PANEL | 1
//	2  | 22  | Start    | low    | SWITCH PANEL | 2
func Names(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	b := shape.Block{Cols: cols}
	from, to := b.Has(name.FieldFrom), b.Has(name.FieldTo)
	if b.Has(name.FieldSignal) || !(from && to) && !(b.Has(name.FieldPin) && (from || to)) {
		return
	}
	of := -1
	for i, c := range cols {
		if i >= len(prof) || c.Field != name.FieldKeep || c.OfEnd != "" || prof[i].Filled == 0 ||
			!column.CouldBeNames(c.Head, &prof[i], column.Data(rows), false) ||
			2*prof[i].Words < prof[i].Filled || 5*prof[i].Distinct < 4*prof[i].Filled {
			continue
		}
		if of >= 0 || c.Given {
			return // either could be the names
		}
		of = i
	}
	if of >= 0 && headsThing(cols[of].Head) && !namesEnds(cols, rows, of) {
		cols[of].Field = name.FieldSignal
	}
}

// headsThing reports whether a heading is one word for a thing that wires are taken to, "Switch", "Sensors".
func headsThing(head string) bool {
	return len(strings.Fields(head)) == 1 && (words.IsThing(head) || words.HeadsThings(name.Words(table.Fold(head))))
}

// namesEnds reports whether some cell of a column stands in the columns of the ends, too: then it has the devices there.
func namesEnds(cols []shape.Column, rows []table.Row, of int) bool {
	ends := map[string]bool{}
	for i, c := range cols {
		if c.Field == name.FieldFrom || c.Field == name.FieldTo {
			for _, r := range rows {
				ends[table.Fold(cell(r, i))] = true
			}
		}
	}
	for _, r := range rows {
		if c := table.Fold(cell(r, of)); c != "" && ends[c] {
			return true
		}
	}
	return false
}

// cell is the text of a row in a column; "" where it has none there.
func cell(r table.Row, i int) string {
	if i < len(r.Cells) {
		return strings.TrimSpace(r.Cells[i])
	}
	return ""
}
