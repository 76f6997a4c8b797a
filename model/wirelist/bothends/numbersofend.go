package bothends

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// NumbersOfEnd takes a column that nobody knows, right behind the devices of one end of the wires, for the cavities of these devices: it
// numbers them, none has one number twice, and nothing else tells the cavities of that end.
//
//	Wire | From       | Brk | To
//	N1   | Main panel | 1   | Mast box
//	N2   | Main panel | 2   | Pulpit
//	N3   | Neg bus    |     | Pulpit
func NumbersOfEnd(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	b := shape.Block{Cols: cols}
	if !b.Has(name.FieldFrom) || !b.Has(name.FieldTo) || !b.Has(name.FieldWire) || b.Has(name.FieldPin) || b.Has(name.FieldConnector) {
		return
	}
	for _, f := range [][2]name.Field{{name.FieldFrom, name.FieldFromPin}, {name.FieldTo, name.FieldToPin}} {
		i := slices.IndexFunc(cols, func(c shape.Column) bool { return c.Field == f[0] })
		if i < 0 || i+1 >= len(prof) || b.Has(f[1]) || prof[i].Most(prof[i].Ends) || !comesAgain(&prof[i]) {
			continue
		}
		if c := &cols[i+1]; c.Field == name.FieldKeep && !c.Given && couldHeadPins(c.Head) && numbersDevices(prof, rows, i) {
			c.Field = f[1]
		}
	}
}

// comesAgain reports whether the devices of a column come again and again.
func comesAgain(p *column.Profile) bool { return p.Filled > 2 && 2*p.Distinct <= p.Filled }

// couldHeadPins reports whether a heading is a word that says of nothing else.
func couldHeadPins(head string) bool {
	w := name.Words(table.Fold(head))
	return len(w) == 1 && !name.IsOtherHead(head) && !name.IsRemark(w) && !name.IsMeasure(w)
}

// numbersDevices reports whether the column behind that of the devices numbers what is of one device, or anew with each.
func numbersDevices(prof []column.Profile, rows []table.Row, devices int) bool {
	p := &prof[devices+1]
	if p.Filled < 3 || !p.All(p.Cavities) || !p.All(p.Numbers) || !column.PairsOnce(rows, devices, devices+1) {
		return false
	}
	of := map[string]bool{}
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if devices+1 < len(r.Cells) && strings.TrimSpace(r.Cells[devices+1]) != "" {
			of[table.Fold(r.Cells[devices])] = true
		}
	}
	return len(of) == 1 || p.Distinct < p.Filled
}
