package column

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// IdsBesideNames takes the first of two columns of names for the ids of the wires, where no other column says them: each of its cells is a
// short name with a number and stands once, and those of the other are words.
//
//	Wire name | From | To   | Signal
//	W1        | PDM  | Fan  | Fan feed
//	W2        | PDM  | Pump | Pump feed
func IdsBesideNames(cols []shape.Column, prof []Profile) {
	var of []int
	for i, c := range cols {
		switch {
		case i >= len(prof) || prof[i].Filled == 0:
		case c.Field == name.FieldWire || c.Field == name.FieldNumber:
			return
		case c.Field == name.FieldSignal:
			of = append(of, i)
		}
	}
	if len(of) != 2 || cols[of[0]].Given || !(&shape.Block{Cols: cols}).Has(name.FieldFrom, name.FieldFromPin, name.FieldRun) {
		return
	}
	ids, names := &prof[of[0]], &prof[of[1]]
	if ids.Filled > 1 && ids.All(ids.Ids) && ids.Unique() && names.Most(names.Long) && 2*names.Ids < names.Filled {
		cols[of[0]].Field = name.FieldWire
	}
}
