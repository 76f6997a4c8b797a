package reading

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// namesCircuits reports whether a column headed by a word for a circuit names what the wires do: another column numbers them.
//
//	Wire No | Circuit       | From
//	41      | Winch feed    | Box
//	42      | 5V ref        | ECU
func (l *look) namesCircuits(i int, c *shape.Column) bool {
	p := &l.prof[i]
	return l.another(i, name.FieldWire) && !l.another(i, name.FieldSignal) && !c.Given && 2*p.Numbers < p.Filled &&
		2*p.Cavities < p.Filled && slices.ContainsFunc(name.Words(table.Fold(c.Head)), isCircuitWord)
}

// isCircuitWord reports whether a word of a heading is one for a circuit. From memory, no source.
func isCircuitWord(w string) bool {
	switch w {
	case "circuit", "stromkreis", "kreis", "circuito", "obwod", "obvod", "krets", "stroomkring", "kreds":
		return true
	}
	return false
}
