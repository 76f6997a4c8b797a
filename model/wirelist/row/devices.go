package row

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// devicesRow makes the wires of a row that has a column for each device: one between two devices, and from the first of
// three or more to each other. The list does not say where such a net parts, and the report says how it was taken.
//
//	Signal | ECU | Dash | Rear
//	Ground | 1   | 5    | 7
func devicesRow(im *draft.Importer, b *shape.Block, cells []string, it draft.Item, column func(int) table.Place) {
	var ends [][]draft.End
	last := 0
	for _, i := range b.Devices() {
		if i >= len(cells) || value.IsNothing(cells[i]) {
			continue
		}
		if name.StateOf(cells[i]) != name.Used {
			it.Notes = append(it.Notes, value.JoinNonEmpty(": ", b.Cols[i].Head, cells[i]))
			continue
		}
		if all := endsAt(im, b, i, cells[i], column(i)); len(all) > 0 {
			ends, last = append(ends, all), i
		}
	}
	tos, toCol := endsOf(im, b, cells, name.FieldTo, name.FieldToPin, &it, column)
	if len(tos) > 0 {
		ends, last = append(ends, tos), max(toCol, 0)
	}
	through := passedEnds(im, b, cells, &it, column)
	if len(through) > 0 && len(ends) > 0 && len(ends) < 3 {
		throughPassages(im, it, ends, through, len(tos) > 0 && len(ends) == 1, column(last))
		return
	}
	ends = append(ends, through...)
	switch {
	case len(ends) == 0 && it.State == name.Spare:
		betweenEnds(im, it, nil, nil, column(last))
	case len(ends) == 0 && it.State != name.Used:
		im.RestOf(&it, "")
	case len(ends) == 0:
		im.Say(report.Warn, "row without cavity", it.Place, table.Tidy(strings.Join(cells, " ")), "left out")
	case len(ends) == 1:
		betweenEnds(im, it, ends[0], nil, column(last))
	case len(ends) == 2:
		betweenEnds(im, it, ends[0], ends[1], column(last))
	default:
		var all []draft.End
		for _, e := range ends {
			all = append(all, e...)
		}
		im.Say(report.Warn, "one net at three devices or more", it.Place, fmt.Sprintf("%q %s", it.Signal, endsText(all)),
			"a wire from the first to each other; the list does not say where it parts")
		for _, far := range all[1:] {
			betweenEnds(im, it, all[:1], []draft.End{far}, column(last))
		}
	}
}

// passedEnds are the cavities of bulkheads that a row names beside the devices.
func passedEnds(im *draft.Importer, b *shape.Block, cells []string, it *draft.Item, column func(int) table.Place) (all [][]draft.End) {
	for i := range min(len(cells), len(b.Cols)) {
		switch {
		case b.Cols[i].Field != name.FieldVia || value.IsNothing(cells[i]):
		case name.StateOf(cells[i]) != name.Used || words.IsDirect(table.Fold(cells[i])):
			it.Notes = append(it.Notes, value.JoinNonEmpty(": ", b.Cols[i].Head, cells[i]))
		default:
			if ends := endsAt(im, b, i, cells[i], column(i)); len(ends) > 0 {
				all = append(all, ends)
			}
		}
	}
	return all
}

// throughPassages makes the wires of a row that goes from one device through bulkheads to another, or ends in the last of them; far says
// that its only device stands behind them.
func throughPassages(im *draft.Importer, it draft.Item, ends, through [][]draft.End, far bool, at table.Place) {
	way := slices.Concat(ends[:1], through, ends[1:])
	if far {
		way = slices.Concat(through, ends)
	}
	for k := 1; k < len(way); k++ {
		one := it
		one.Notes = slices.Clone(it.Notes)
		betweenEnds(im, one, way[k-1], way[k], at)
	}
}

// endsAt are the ends that a cell names in the device of its column.
func endsAt(im *draft.Importer, b *shape.Block, i int, cell string, at table.Place) (all []draft.End) {
	device := b.Cols[i].Of
	if device == "" {
		device = shape.DeviceOf(b.Cols[i].Head)
	}
	if device == "" {
		device = "column " + table.ColumnLetter(i)
	}
	for _, p := range name.SplitPins(cell) {
		for _, q := range spreadPin(im, b, p, nil, at) {
			all = append(all, draft.End{Text: device, Pin: q})
		}
	}
	return all
}
