package column

import (
	"slices"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Addresses reports whether a column begins with the address of an input or an output: below the name of a controller it is one terminal.
//
//	Signal    | PLC A1 | Door plug
//	Gate open | I0.3   | 5
func Addresses(rows []table.Row, i int) bool {
	at := slices.IndexFunc(rows, func(r table.Row) bool { return i < len(r.Cells) && !value.IsNothing(r.Cells[i]) && !shape.IsText(r) })
	return at >= 0 && value.IsAddress(rows[at].Cells[i])
}
