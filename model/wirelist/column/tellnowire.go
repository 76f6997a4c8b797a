package column

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/words"
)

// TellNoWire spares the columns that tell of a cavity and not of its wire: the sizes that a terminal takes, how far a wire is stripped for
// it, and what the cavity could be used for beside its first function.
//
//	Terminal | Name | Clamping range      Pin | Primary function | Alternate function
//	1        | L    | 0.5 - 4 mm²         1   | Analogue input 1 | Digital input 1
func TellNoWire(cols []shape.Column, prof []Profile) {
	for i := range cols {
		c, p := &cols[i], &prof[i]
		if c.Given || p.Filled == 0 {
			continue
		}
		switch sizes := c.Field == name.FieldGauge || c.Field == name.FieldKeep || c.Field == name.FieldWire && p.All(p.Units); {
		case sizes && p.Words < p.Filled && p.Lengths+p.Currents == 0 && words.SaysTerminalTakes(c.Head),
			c.Field == name.FieldLength && words.SaysStripping(c.Head),
			c.Field == name.FieldKeep && c.Known() && words.SaysFurtherFunction(c.Head):
			c.Field, c.Spared = name.FieldKeep, true
		}
	}
}

// TellFunctions reports whether a table says what the cavities of a device could be used for beside their first function.
func TellFunctions(cols []shape.Column) bool {
	return slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Spared && words.SaysFurtherFunction(c.Head) })
}
