package together

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Table is what is looked at.
type Table struct {
	Cols   []shape.Column // as their headings alone say
	Prof   []column.Profile
	Rows   []table.Row
	Titled bool                    // a title names what the rows are cavities of
	Words  map[string]name.Meaning // the headings that are known

	outputs int // the column of the outputs whose cavities stand in another; none where it has none
}

// Columns gives each column its meaning; nil where the table is not plain, or does not come out whole.
//
//	Wire # | Plug | No. | Function     | COLOR       | Connected to | Pin
//	L1     | PDM  | 04  | Oil pressure | brown/black | Oil press    | A
func (t Table) Columns() []shape.Column {
	if len(t.Rows) < 2 {
		return nil
	}
	for i, c := range t.Cols {
		if c.Given || c.Head == "" && t.filled(i) || c.OfEnd != "" || c.Field == name.FieldRun || c.Field == name.FieldVia ||
			c.Field == name.FieldDevicePin {
			return nil
		}
	}
	t.outputs = none
	all, ok := t.find()
	if !ok {
		return nil
	}
	near, far, ok := t.sides(t.aside(all))
	if !ok {
		return nil
	}
	cols := slices.Clone(t.Cols)
	if !t.values(cols, near, far) {
		return nil
	}
	t.give(cols, near, far)
	return cols
}

// sides says which of the places is the near one and which the far one.
func (t *Table) sides(all []place) (near, far place, ok bool) {
	switch len(all) {
	case 1:
		if p := all[0]; p.device >= 0 && p.number && t.once(p) { // "Connector | Position", and no far end
			return p, place{device: none, pins: none}, true
		}
		near, ok = t.titled(all[0])
		return near, all[0], ok
	case 2:
	default:
		return place{}, place{}, false
	}
	near, far = all[0], all[1]
	whole := func(p place) bool { return p.pins >= 0 }
	switch {
	case near.side == name.FieldTo && far.side == name.FieldTo || near.side == name.FieldFrom && far.side == name.FieldFrom:
		return place{}, place{}, false
	case near.side == name.FieldTo || far.side == name.FieldFrom:
		near, far = far, near
	case near.side != "" || far.side != "":
	case !whole(near) && whole(far) || !t.once(near) && t.once(far):
		near, far = far, near
	case first(far) < first(near):
		near, far = far, near
	}
	if whole(near) && !t.once(near) || !whole(near) && near.side != name.FieldFrom {
		return place{}, place{}, false
	}
	return near, far, near.device >= 0 || near.of != "" || t.Titled
}

// titled is the near place of a table of one connector that a title names, whose cavities stand below "No.".
func (t *Table) titled(far place) (near place, ok bool) {
	near = place{device: none, pins: none, number: true}
	if !t.Titled || far.side != name.FieldTo {
		return near, false
	}
	for i, c := range t.Cols {
		if c.Field == name.FieldNumber && t.filled(i) && i != far.pins {
			if near.pins >= 0 {
				return near, false
			}
			near.pins = i
		}
	}
	return near, near.pins >= 0 && t.holdsCavities(near.pins) && t.once(near)
}

// first is the first column of a place.
func first(p place) int {
	if p.device >= 0 && (p.pins < 0 || p.device < p.pins) {
		return p.device
	}
	return p.pins
}

// give writes the meanings of the places.
func (t *Table) give(cols []shape.Column, near, far place) {
	set := func(i int, f name.Field, of string) {
		if i >= 0 {
			cols[i].Field, cols[i].Of = f, of
			cols[i].Know()
		}
	}
	from, pins := name.FieldConnector, name.FieldPin
	if near.side == name.FieldFrom || near.pins == none {
		from, pins = name.FieldFrom, name.FieldFromPin
	}
	if near.of != "" && far.of != "" {
		pins = name.FieldFromPin
	}
	set(near.device, from, "")
	set(near.pins, pins, near.of)
	set(far.device, name.FieldTo, "")
	set(far.pins, name.FieldToPin, far.of)
}
