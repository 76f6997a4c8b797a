package column

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/words"
)

// TerminalTakes spares the columns of what a terminal takes: a range of sizes, or the largest, is no size of the wire in it.
//
//	Terminal | Name | Clamping range
//	1        | L    | 0.5 - 4 mm²
func TerminalTakes(cols []shape.Column, prof []Profile) {
	for i := range cols {
		c, p := &cols[i], &prof[i]
		sizes := c.Field == name.FieldGauge || c.Field == name.FieldKeep || c.Field == name.FieldWire && p.All(p.Units)
		if sizes && !c.Given && p.Words < p.Filled && p.Lengths+p.Currents == 0 && words.SaysTerminalTakes(c.Head) {
			c.Field, c.Spared = name.FieldKeep, true
		}
	}
}
