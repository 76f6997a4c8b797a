package bothends

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// CarriedThings takes a first column of far ends for the thing that the rows below it belong to as well, where it stands in the first of
// several rows alone, and each of the others tells as much of its wire: the wires of one thing, told one below another.
//
//	Sensor    | Colour | Signal | Logger channel
//	Load cell | red    | EXC+   | 1
//	          | black  | EXC-   | 2
func CarriedThings(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	b := shape.Block{Cols: cols}
	if len(cols) == 0 || cols[0].Field != name.FieldTo || cols[0].Carried || !b.Has(name.FieldPin) ||
		b.Has(name.FieldToPin, name.FieldConnector) || !prof[0].Unique() || 2*prof[0].Filled > column.Data(rows) || prof[0].Ends > 0 {
		return
	}
	most := 0 // cells that the row above has which names the thing
	for _, r := range rows {
		if shape.IsText(r) {
			return
		}
		n := 0
		for i, c := range r.Cells {
			if i > 0 && c != "" {
				n++
			}
		}
		switch {
		case len(r.Cells) == 0:
		case !value.IsNothing(r.Cells[0]):
			most = n
		case most == 0 || n < most || n < 2:
			return
		}
	}
	cols[0].Carried = true
}
