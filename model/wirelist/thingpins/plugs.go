package thingpins

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Plugs takes the first of two columns beside each other, both headed by a word for cavities, for the connectors: its cells are names
// that come again, and none of them has one of the cavities behind it twice. "Kontakt" is a cavity here and a plug there.
//
//	Kontakt | Stift | Funktion
//	K7      | 1     | lanterna
//	K7      | 2     | pump
func Plugs(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	for i := 1; i < len(cols) && i < len(prof); i++ {
		if c := cols[i-1]; cols[i].Field != name.FieldPin || c.Field != name.FieldPin || c.Given || c.Of != "" || cols[i].Of != "" {
			continue
		}
		p, pins := &prof[i-1], &prof[i]
		if p.Filled > 2 && p.Distinct < p.Filled && 2*p.Distinct <= p.Filled && p.Numbers == 0 && pins.Filled >= p.Filled &&
			pins.All(pins.Cavities) && areNames(rows, i-1) && column.PairsOnce(rows, i-1, i) {
			cols[i-1].Field = name.FieldConnector
		}
		return
	}
}

// areNames reports whether the cells of a column are names of two letters or more, or of a letter and a number.
func areNames(rows []table.Row, col int) bool {
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if col < len(r.Cells) && r.Cells[col] != "" && !shape.IsText(r) && (len(r.Cells[col]) < 2 || !name.IsDesignator(r.Cells[col])) {
			return false
		}
	}
	return true
}
