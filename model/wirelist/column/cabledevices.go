package column

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// CableDevices are the columns of a list of cables in which one names the device that each cable runs from, the same in all its rows, and
// another the connector and the cavity that each core runs to, whatever the first is called. nil where the columns are anything else.
//
//	Cable | Colour | Figure | Show box terminal | Used for
//	N1    | orange | Clown  | J1-1              | 5V
//	N1    | green  | Clown  |                   | spare
func CableDevices(cols []shape.Column, prof []Profile, rows []table.Row) []shape.Column {
	cable, pin, device := -1, -1, -1
	for i := range prof {
		c, p := &cols[i], &prof[i]
		if (c.Field == name.FieldPin || c.Field == name.FieldKeep) && !c.Given && p.Most(CavitiesIn(rows, i)) {
			if pin >= 0 {
				return nil
			}
			pin = i
			continue
		}
		switch c.Field {
		case name.FieldCable:
			cable = i
		case name.FieldKeep:
			if w := name.Words(table.Fold(c.Head)); device < 0 && !c.Given && len(w) > 0 && len(w) < 4 && 2*p.Words >= p.Filled &&
				p.All(p.Long) &&
				p.States+p.Colours+p.Sized == 0 && !p.Unique() && p.Distinct > 1 && !name.IsRemark(w) && !name.IsMeasure(w) &&
				!name.IsOtherHead(c.Head) {
				device = i
			}
		case name.FieldPin, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldVia,
			name.FieldConnector:
			if p.Filled > 0 {
				return nil
			}
		}
	}
	if cable < 0 || pin < 0 || device < 0 || !areOfCables(rows, cable, device) {
		return nil
	}
	cols = slices.Clone(cols)
	cols[device].Field, cols[pin].Field, cols[pin].Of, cols[pin].InCell = name.FieldFrom, name.FieldTo, "", false
	return cols
}

// areOfCables reports whether each row of a cable has the one device of it, and two cables or more have another one each.
func areOfCables(rows []table.Row, cable, device int) bool {
	of, seen := map[string]string{}, map[string]bool{}
	for _, r := range rows {
		if shape.IsText(r) || max(cable, device) >= len(r.Cells) || value.IsNothing(r.Cells[cable]) {
			continue
		}
		d := table.Fold(r.Cells[device])
		if was, known := of[r.Cells[cable]]; d == "" || known && was != d || !known && seen[d] {
			return false
		}
		of[r.Cells[cable]], seen[d] = d, true
	}
	return len(of) > 1
}
