package sidehead

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// NumbersPart reports whether a heading is of part numbers, and the one before it says that they are those of the connectors or of what is
// put on the end of a wire, and not of the wire.
//
//	Connector | Part no. | Pin | Terminal   | P/N   | Wire
//	C1        | CN-4S    | 1   | socket, 16 | T-104 | A1
func NumbersPart(head, before string, of name.Field) bool {
	switch strings.Join(name.Words(table.Fold(head)), " ") {
	case "part number", "part no", "p n", "p/n", "pn", "part", "part #", "teilenummer", "teile nr", "reference", "ref", "codice",
		"referencia":
		return of == name.FieldConnector || of == name.FieldFrom || of == name.FieldTo ||
			of == name.FieldFromPin || of == name.FieldToPin || IsFitting(table.Fold(before))
	}
	return false
}
