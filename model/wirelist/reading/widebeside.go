package reading

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// wideBeside reads a table that has a column for each of the large connectors, headed by it, and two columns more for all the devices that
// stand at the end of one wire or two: the device and its cavity. A connector that a text above the table calls a bulkhead is on the way of
// the wires that have a cavity of it.
//
//	X1 = bulkhead
//	Signal  | ECU | Dash | X1 | Device  | Pin
//	Oil     | 3   |      | 1  | Oil pr. | A
//	Warning | 4   | 7    |    |         |
func wideBeside(l *look) []shape.Column {
	if len(l.Cols) < 5 || len(l.Src.Head) == 0 || l.Has(l.Cols, name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldVia) {
		return nil
	}
	to := l.deviceAndPin()
	if to < 0 {
		return nil
	}
	var of []int
	for i, c := range l.Cols {
		switch {
		case i == to || i == to+1:
		case c.Field == name.FieldDevicePin && c.Given, !c.Given && l.isDeviceColumn(i):
			of = append(of, i)
		case (c.Field == name.FieldPin || c.Field == name.FieldTo || c.Field == name.FieldToPin) && l.Prof[i].Filled > 0:
			return nil
		}
	}
	if len(of) < 2 || !(devices{l, of}).saysDevices() && !l.eachHasGaps(of) || !l.reachTwo(append(slices.Clone(of), to)) {
		return nil
	}
	cols := slices.Clone(l.Cols)
	ends := 0
	for _, i := range of {
		cols[i].Field, cols[i].Of = name.FieldDevicePin, shape.DeviceOf(cols[i].Head)
		if l.tellsPassage(column.PassageOf(cols[i].Head)) || words.SaysPassage(cols[i].Head) {
			cols[i].Field, cols[i].Of = name.FieldVia, column.PassageOf(cols[i].Head)
			continue
		}
		ends++
	}
	cols[to].Field, cols[to+1].Field = name.FieldTo, name.FieldToPin
	if l.Heads.IsOfHead(cols[to+1].Head, cols[to].Head) {
		cols[to+1].Know()
	}
	if ends == 0 {
		return nil
	}
	return cols
}

// deviceAndPin is the column of the devices that have the column of their cavities right behind them; -1 where there is none, or more
// than one.
func (l *look) deviceAndPin() int {
	found := -1
	for i := range len(l.Cols) - 1 {
		c, pin := &l.Cols[i], &l.Cols[i+1]
		if c.Given || pin.Given || l.Prof[i].Filled == 0 || l.Prof[i+1].Filled == 0 || !l.headsDevices(c) {
			continue
		}
		ofIt := l.EndsInPin(pin.Head) && l.Heads.IsOfHead(pin.Head, c.Head) // "Dev. pin"
		if !ofIt && (pin.Of != "" || pin.Field != name.FieldPin && pin.Field != name.FieldToPin) {
			continue
		}
		if p := &l.Prof[i]; p.Most(p.Numbers) || found >= 0 || !l.holdsTerminals(i+1) {
			return -1
		}
		found = i
	}
	return found
}

// headsDevices reports whether a column holds devices by its heading.
func (l *look) headsDevices(c *shape.Column) bool {
	switch c.Field {
	case name.FieldTo, name.FieldConnector:
		return true
	case name.FieldKeep:
		w := name.Words(table.Fold(c.Head))
		return len(w) > 0 && name.IsDeviceWord(w[len(w)-1])
	}
	return false
}

// holdsTerminals reports whether most cells of a column are cavities; devices have the same ones.
func (l *look) holdsTerminals(i int) bool {
	p := &l.Prof[i]
	return p.Most(max(p.Cavities, l.ShortNames(i)))
}

// eachHasGaps reports whether a value of a wire stands in the rows and each of some columns is empty in one of them: a figure is in all.
func (l *look) eachHasGaps(of []int) bool {
	return l.Holds(l.Cols, name.FieldColour, name.FieldGauge) >= 0 && !slices.ContainsFunc(of, func(i int) bool {
		return !(devices{l, []int{i}}).hasGaps()
	})
}

// reachTwo reports whether most rows have a cell in two of some columns or more.
func (l *look) reachTwo(of []int) bool {
	rows, two := 0, 0
	for _, r := range l.Src.Rows[:min(len(l.Src.Rows), column.MostLooked)] {
		n := 0
		for _, i := range of {
			if i < len(r.Cells) && !value.IsNothing(r.Cells[i]) {
				n++
			}
		}
		if n > 0 && !shape.IsText(r) {
			rows++
		}
		if n > 1 && !shape.IsText(r) {
			two++
		}
	}
	return 4*two >= 3*rows && two > 1
}
