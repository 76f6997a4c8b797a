package runon

import (
	"slices"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// DeviceAbove fills in the device of an end that a list of both ends writes in the first row of its group alone: the cell of
// the device is empty, that of its cavity is not.
//
//	From | Pin | To   | Pin
//	PDM  | A1  | Pump | 1
//	     | A2  | Pump | 2
func DeviceAbove(im *draft.Importer, b *shape.Block, cells []string, last map[name.Field]string, at table.Place) []string {
	named, goesOn := false, false
	for _, side := range [][2]name.Field{{name.FieldFrom, name.FieldFromPin}, {name.FieldTo, name.FieldToPin}} {
		i := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == side[0] })
		if i < 0 || i >= len(cells) || !b.Has(side[1]) {
			continue
		}
		device := b.Cell(cells, side[0])
		pin, pinCol := b.CellAt(cells, side[1])
		switch {
		case device != "":
			last[side[0]] = cells[i]
			named = true
		case (!value.IsNothing(pin) || pin == "-" && b.IsPole(pinCol)) && last[side[0]] != "" && !value.IsNothing(last[side[0]]):
			cells = slices.Clone(cells)
			cells[i] = last[side[0]]
			goesOn = true
			im.Say(report.Note, "connector not repeated", at, cells[i], "taken from the row above")
		}
	}
	cells = nearEndAbove(im, b, cells, last, at)
	return cableAbove(im, b, cells, last, goesOn && !named, at)
}

// nearEndAbove fills in the whole near end of a row that has none, and no name either: another wire from the place of the row above.
//
//	Name  | From | Pin | To     | Pin | Colour
//	Lamps | PDM  | A3  | Lamp 1 | +   | white
//	      |      |     | Lamp 2 | +   | white
func nearEndAbove(im *draft.Importer, b *shape.Block, cells []string, last map[name.Field]string, at table.Place) []string {
	i := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldFrom })
	p := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldFromPin })
	if i < 0 || max(i, p) >= len(cells) {
		return cells
	}
	if cells[i] != "" || p >= 0 && cells[p] != "" {
		if last[name.FieldFrom] = cells[i]; p >= 0 {
			last[name.FieldFromPin] = cells[p]
		}
		return cells
	}
	pin := last[name.FieldFromPin]
	if value.IsNothing(last[name.FieldFrom]) || p >= 0 && value.IsNothing(pin) && pin != "-" || b.Cell(cells, name.FieldTo) == "" ||
		b.Cell(cells, name.FieldSignal) != "" || !b.Has(name.FieldSignal) ||
		b.Cell(cells, name.FieldColour)+b.Cell(cells, name.FieldGauge) == "" {
		return cells
	}
	cells = slices.Clone(cells)
	cells[i] = last[name.FieldFrom]
	if p >= 0 {
		cells[p] = pin
	}
	im.Say(report.Warn, "a row without a name and without a near end", at, value.JoinNonEmpty(" ", cells[i], pin),
		"the end is taken from the row above; look whether two wires are in that cavity")
	return cells
}

// ofCable is where the kind of the cable is kept, beside its name.
const ofCable name.Field = "kind of the cable"

// cableAbove fills in the cable of a row that goes on with the devices of the row above: it is written once for its cores.
func cableAbove(im *draft.Importer, b *shape.Block, cells []string, last map[name.Field]string, goesOn bool, at table.Place) []string {
	i := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldCable })
	if i < 0 || i >= len(cells) {
		return cells
	}
	kind := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.CoreSize })
	switch {
	case cells[i] != "" || !goesOn:
		if last[name.FieldCable] = cells[i]; kind >= 0 && kind < len(cells) {
			last[ofCable] = cells[kind]
		}
	case !value.IsNothing(last[name.FieldCable]) && cable.YesOrNo(last[name.FieldCable]) == "":
		cells = slices.Clone(cells)
		if cells[i] = last[name.FieldCable]; kind >= 0 && kind < len(cells) && cells[kind] == "" {
			cells[kind] = last[ofCable] // what it is made of says the size of each of its cores
		}
		im.Say(report.Note, "cable not repeated", at, cells[i], "taken from the row above")
	}
	return cells
}
