package reading

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// endsBelow takes the columns below "Conn-pin" for the ends that their cells are: that heading names no device.
//
//	Conn-pin | Signal | Conn-pin
//	J1-1     | Clock  | J4-2
func (l *look) endsBelow(cols []shape.Column) {
	for i := range cols {
		c := &cols[i]
		of := map[name.Field]name.Field{name.FieldFromPin: name.FieldFrom, name.FieldToPin: name.FieldTo}[c.Field]
		w := name.Words(table.Fold(c.Of))
		if of == "" || c.Given || len(w) != 1 || w[0] != "conn" && !name.IsConnectorWord(w[0]) || l.Has(cols, of) || !l.AllParted(i) {
			continue
		}
		c.Field, c.Of = of, ""
	}
}
