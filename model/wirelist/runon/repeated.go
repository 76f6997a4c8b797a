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
	return cableAbove(im, b, cells, last, goesOn && !named, at)
}

// cableAbove fills in the cable of a row that goes on with the devices of the row above: it is written once for its cores.
func cableAbove(im *draft.Importer, b *shape.Block, cells []string, last map[name.Field]string, goesOn bool, at table.Place) []string {
	i := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldCable })
	if i < 0 || i >= len(cells) {
		return cells
	}
	switch {
	case cells[i] != "" || !goesOn:
		last[name.FieldCable] = cells[i]
	case !value.IsNothing(last[name.FieldCable]) && cable.YesOrNo(last[name.FieldCable]) == "":
		cells = slices.Clone(cells)
		cells[i] = last[name.FieldCable]
		im.Say(report.Note, "cable not repeated", at, cells[i], "taken from the row above")
	}
	return cells
}
