package reading

import (
	"contralay/model/wirelist/farcolumn"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// plugEnds takes the column that is headed by a word for connectors, and has the plug and its cavity in each cell, for the far ends of the
// cavities that another column has.
//
//	Signal     | Motor board (J4) | Wheel plug | Colour
//	Motor FL + | 1                | FL-A       | red
//	Motor FL - | 2                | FL-B       | black
func (l *look) plugEnds(cols []shape.Column) {
	if l.Has(cols, name.FieldTo, name.FieldToPin, name.FieldConnector) {
		return
	}
	for i := range cols {
		if c := &cols[i]; c.Field == name.FieldKeep && !c.Given && farcolumn.AreEnds(c.Head, l.Src.Rows, i) {
			c.Field = name.FieldTo
			return
		}
	}
}
