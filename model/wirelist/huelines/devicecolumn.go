package huelines

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// A column has the device of each wire, one its colour, and one the place where it goes.
//
//	Device      | Colour | Where it goes
//	Bilge pump  | Brown  | Float switch
//	Bilge pump  | Black  | Negative bus

// DeviceColumn writes the heading of a near end above the devices of such a table, where each row names one and no column has cavities.
func DeviceColumn(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() || h.Recipe != nil {
		return t.Rows
	}
	for i := range min(len(t.Rows), mostText) {
		r := t.Rows[i]
		if len(r.Cells) < 3 || r.Level > 0 || !slices.ContainsFunc(r.Cells, saysDevice) {
			continue
		}
		device, to, colour, rival := -1, -1, -1, false
		cols, _ := h.Columns([]table.Row{r}, len(r.Cells))
		for k, c := range cols {
			switch {
			case c.Field == name.FieldTo:
				to = k
			case c.Field == name.FieldColour:
				colour = k
			case (c.Field == name.FieldKeep || c.Field == name.FieldConnector) && saysDevice(c.Head) && device < 0:
				device = k
			case c.Field != name.FieldKeep && c.Field != name.FieldNote && c.Field != name.FieldSignal && c.Field != name.FieldGauge &&
				c.Field != name.FieldLength && c.Field != name.FieldWire:
				rival = true
			}
		}
		if device < 0 || to < 0 || colour < 0 || device > to || rival || !namesEach(t.Rows[i+1:], device, to) {
			continue
		}
		rows := slices.Clone(t.Rows)
		rows[i].Cells = slices.Clone(r.Cells)
		rows[i].Cells[device] = heads[0]
		return rows
	}
	return t.Rows
}

// saysDevice reports whether a heading is one word for a device.
func saysDevice(head string) bool {
	w := name.Words(table.Fold(head))
	return len(w) == 1 && (name.IsDeviceWord(w[0]) ||
		w[0] == "equipment" || w[0] == "apparaat" || w[0] == "componente" || w[0] == "bauteil")
}

// namesEach reports whether all rows of the table have a device, and most another thing where it goes.
func namesEach(rows []table.Row, device, to int) bool {
	n := 0
	for _, r := range rows {
		if len(r.Cells) <= max(device, to) || r.Level > 0 {
			break
		}
		if r.Cells[device] == "" || name.IsCavity(r.Cells[device]) || table.Fold(r.Cells[device]) == table.Fold(r.Cells[to]) {
			return false
		}
		n++
	}
	return n > 1
}
