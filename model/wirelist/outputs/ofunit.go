package outputs

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// OfUnit takes the outputs of a unit, each once and named as outputs are, for second names of the cavities beside them, whose heading
// names that unit with a word for cavities, in a table that says no other cavities and numbers no connectors.
//
//	Output | PDM pin | Load
//	OUT1   | A1      | Fuel pump
func OfUnit(cols []shape.Column, prof []column.Profile, rows []table.Row, isPin func(word string) bool) {
	out, pin := -1, -1
	for i, c := range cols {
		w := name.Words(table.Fold(c.Head))
		switch {
		case prof[i].Filled == 0:
		case c.Given:
			return
		case c.Field == name.FieldPin && isOutput(c.Head):
			if out >= 0 {
				return
			}
			out = i
		case (c.Field == name.FieldKeep || c.Field == name.FieldPin) && len(w) > 1 && isPin(w[len(w)-1]) && !words.IsOutput(w[0]):
			if pin >= 0 {
				return
			}
			pin = i
		case c.Field == name.FieldPin, c.Field == name.FieldConnector, c.Field == name.FieldFrom, c.Field == name.FieldFromPin:
			return
		}
	}
	if out < 0 || pin < 0 || pin > out+1 || out > pin+1 { // they stand side by side
		return
	}
	p, q := &prof[out], &prof[pin]
	if cols[out].Of != "" || !q.All(q.Cavities) || !q.Unique() || q.Filled < p.Filled || p.Filled < 2 || !p.Unique() ||
		!Are(rows, out) {
		return
	}
	cols[out].Field, cols[out].Alias = name.FieldKeep, true
	cols[pin].Field, cols[pin].Of = name.FieldPin, shape.DeviceOf(cols[pin].Head)
	cols[pin].Know()
}

// Are reports whether every cell of a column is a word or a letter for an output and its number: "OUT1", "Ch 3", "Q2".
func Are(rows []table.Row, i int) bool {
	for _, r := range rows {
		if i >= len(r.Cells) || r.Cells[i] == "" || shape.IsText(r) {
			continue
		}
		cell := table.Fold(r.Cells[i])
		word := strings.TrimRight(strings.TrimRight(cell, "0123456789"), " -_.#")
		if len(word) == len(cell) {
			return false
		}
		switch word {
		case "o", "op", "q", "hp", "lp", "hs", "ls", "hso", "lso", "pwm", "do", "ao", "dout", "aout", "outp":
		default:
			if !words.IsOutput(word) {
				return false
			}
		}
	}
	return true
}
