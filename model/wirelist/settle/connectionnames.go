package settle

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/table"
)

// connectionNames takes a column headed as connections, the only one beside cavities, for the names of the nets, where its cells
// are short names, and no devices with a place in them.
//
//	Pin | Connection
//	1   | CLK
//	2   | GND
func (l *Look) connectionNames() {
	if !l.Has(l.Cols, name.FieldPin) || l.Has(l.Cols, name.FieldSignal, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin) {
		return
	}
	for i := range l.Cols {
		c := &l.Cols[i]
		if w := strings.Join(name.Words(table.Fold(c.Head)), " "); c.Given || c.Field != name.FieldRun ||
			w != "connection" && w != "connections" {
			continue
		}
		if n, short := pads.ShortNets(l.Src.Rows, i); n > 1 && 4*short >= 3*n {
			c.Field = name.FieldSignal
		}
	}
}
