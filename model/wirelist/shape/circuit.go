package shape

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// IsCircuit reports whether a heading has a word for a circuit: where another column numbers the wires, this one names what they do.
// Its words are from memory, no source.
//
//	Wire No | Circuit       | From
//	41      | Winch feed    | Box
//	42      | 5V ref        | ECU
func IsCircuit(head string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(head)), func(w string) bool {
		switch w {
		case "circuit", "stromkreis", "kreis", "circuito", "obwod", "obvod", "krets", "stroomkring", "kreds", "kurs",
			"okruh", "piiri", "aramkor", "devre":
			return true
		}
		return false
	})
}
