package bothends

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"strings"
)

// Termination takes a column headed so for the far ends where the table says where its wires come from and nothing else says where they
// go. Beside far ends it is the kind of terminal.
//
//	Wire | Origin | Termination     | Gauge
//	1    | ECU-A1 | Main relay 87   | 18
func Termination(cols []shape.Column, prof []column.Profile) {
	at, from := -1, false
	for i, c := range cols {
		if i >= len(prof) || prof[i].Filled == 0 {
			continue
		}
		switch c.Field {
		case name.FieldFrom:
			from = true
		case name.FieldTo, name.FieldToPin, name.FieldRun, name.FieldPin, name.FieldVia:
			return
		case name.FieldKeep, name.FieldContact:
			switch strings.Join(name.Words(table.Fold(c.Head)), " ") {
			case "termination", "terminates", "terminates at", "terminated at", "ends at", "endpoint", "end point":
				if at = i; c.Given {
					return
				}
			}
		}
	}
	if from && at >= 0 {
		cols[at].Field = name.FieldTo
	}
}
