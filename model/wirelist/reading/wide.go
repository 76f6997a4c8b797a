package reading

import (
	"slices"
	"strings"

	"contralay/model/wirelist/cableheads"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/placehead"
	"contralay/model/wirelist/settle"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// wide reads a table that has a column for each device, headed by it: a row is one net, its cells the cavities that the net
// has in each device. An empty cell, a dash: the net does not reach that device.
//
//	Signal | ECU | Dash | Rear
//	CAN H  | 12  | 3    | -
//	Ground | 1   | 5    | 7
func wide(l *look) []shape.Column {
	if len(l.Src.Head) == 0 || l.Holds(l.Cols, name.FieldFrom, name.FieldTo, name.FieldRun) >= 0 {
		return nil
	}
	var of []int
	for i, c := range l.Cols {
		switch {
		case c.Field == name.FieldDevicePin && c.Given, !c.Given && !c.Headed && l.isDeviceColumn(i):
			of = append(of, i)
		case c.Field == name.FieldPin && l.Prof[i].Filled > 0, c.Field == name.FieldFromPin || c.Field == name.FieldToPin:
			return nil // it has cavities of its own
		}
	}
	of = devices{l, of}.withOthers()
	inPin := func(i int) bool { return l.EndsInPin(l.Cols[i].Head) }
	if slices.ContainsFunc(of, inPin) { // "ECU pin" says what the column "Relay" beside it is not
		of = slices.DeleteFunc(of, func(i int) bool { return !inPin(i) && !l.Cols[i].Given })
		if len(of) == 2 {
			return nil // a from and a to
		}
	}
	if len(of) == 2 && cableheads.Made(l.Cols) {
		return nil // each core runs from the one to the other
	}
	if len(of) < 2 || !(devices{l, of}).joinsDevices() || !(devices{l, of}).saysDevices() {
		return nil
	}
	cols := slices.Clone(l.Cols)
	for _, i := range of {
		cols[i].Field, cols[i].Of = name.FieldDevicePin, shape.DeviceOf(cols[i].Head)
	}
	if !l.Has(cols, name.FieldSignal, name.FieldWire) {
		for i := range cols {
			if p := &l.Prof[i]; cols[i].Field == name.FieldKeep && !cols[i].Given && p.Filled > 1 && p.Most(p.Long) && p.Unique() {
				cols[i].Field = name.FieldSignal
				break
			}
		}
	}
	return cols
}

// devices are some columns that could each hold the cavities of one device.
type devices struct {
	*look
	of []int
}

// isDeviceColumn reports whether a column can be the cavities that some nets have in one device: its heading is of nothing
// else, its cells are cavities, hardly one of them comes twice.
func (l *look) isDeviceColumn(i int) bool {
	c, p := &l.Cols[i], &l.Prof[i]
	w := name.Words(table.Fold(c.Head))
	named := l.EndsInPin(c.Head) || c.Of != ""
	switch {
	case c.Head == "" || len(w) == 0 || p.Prose > 0 || name.IsSpent(c.Head), c.Spared && column.HeadsCores(c.Head):
		return false
	case p.Filled == 0:
		return l.EndsInPin(c.Head)
	case !named && (name.IsOtherHead(c.Head) || name.IsRemark(w) || name.IsMeasure(w)):
		return false
	case c.Field == name.FieldPin && !named:
		return false
	case c.Field != name.FieldKeep && c.Field != name.FieldConnector && c.Field != name.FieldPin && !named:
		return false
	}
	n := 0
	for _, r := range l.Src.Rows[:min(len(l.Src.Rows), column.MostLooked)] {
		if i < len(r.Cells) && !value.IsNothing(r.Cells[i]) && !shape.IsText(r) && (isCavityOrMark(r.Cells[i]) ||
			l.HeadsDevice(i) && l.saysOfWires() > 0 && len(r.Cells[i]) <= settle.MostPad) {
			n++
		}
	}
	return 10*n >= 9*p.Filled && p.Numbers+p.Distinct > 0 && 10*p.Distinct >= 8*p.Filled
}

// withOthers is the columns with those added beside them that hold short names, each once, below a heading of nothing
// else: the device has a name that nobody knows.
func (l devices) withOthers() []int {
	if len(l.of) < 2 || l.saysOfWires() == 0 {
		return l.of
	}
	for i := l.of[0]; i < len(l.Cols); i++ {
		c, p := &l.Cols[i], &l.Prof[i]
		w := name.Words(table.Fold(c.Head))
		if slices.Contains(l.of, i) || !slices.Contains(l.of, i-1) {
			continue
		}
		if c.Given || c.Field != name.FieldKeep || len(w) == 0 || p.Filled == 0 || !p.All(l.ShortNames(i)) || !p.Unique() ||
			name.IsRemark(w) || name.IsMeasure(w) || name.IsOtherHead(c.Head) || p.Colours > 0 || p.Units > 0 {
			break
		}
		l.of = append(l.of, i)
	}
	return l.of
}

// isCavityOrMark reports whether a cell of a device is a cavity, several of them, or says that there is none.
func isCavityOrMark(cell string) bool {
	return !strings.ContainsAny(cell, ".%") && name.IsCavities(cell) || value.IsAddress(cell) || name.StateOf(cell) == name.Blank
}

// joinsDevices reports whether half of the rows that reach a device reach two or more.
func (l devices) joinsDevices() bool {
	one, more := 0, 0
	for _, r := range l.Src.Rows[:min(len(l.Src.Rows), column.MostLooked)] {
		n := 0
		for _, i := range l.of {
			if i < len(r.Cells) && !value.IsNothing(r.Cells[i]) && name.StateOf(r.Cells[i]) == name.Used {
				n++
			}
		}
		switch {
		case shape.IsText(r):
		case n == 1:
			one++
		case n > 1:
			more++
		}
	}
	return more > 0 && more >= one
}

// saysDevices reports whether something says that the headings are of devices and the cells of cavities: the headings
// themselves; of three columns or more one heading, a cavity with a letter, a value of a wire beside them, or a title of pins.
func (l devices) saysDevices() bool {
	headed, lettered := 0, false
	for _, i := range l.of {
		c, p := &l.Cols[i], &l.Prof[i]
		if c.Given || l.EndsInPin(c.Head) || name.IsDesignator(c.Head) || slices.ContainsFunc(name.Words(table.Fold(c.Head)),
			func(w string) bool { return name.IsDeviceWord(w) || name.IsUnit(w) }) {
			headed++
		}
		lettered = lettered || p.Numbers < p.Filled && p.Most(p.Cavities)
	}
	if len(l.of) == 2 {
		return headed == 2
	}
	return headed > 0 || lettered ||
		l.hasGaps() && (l.saysPins() || l.Holds(l.Cols, name.FieldColour, name.FieldGauge, name.FieldCable) >= 0)
}

// saysDevice reports whether one of some headings is a device, a cell is a cavity with a letter, or a value of a wire stands
// beside them.
func (l devices) saysDevice() bool {
	if l.saysPins() || l.Holds(l.Cols, name.FieldColour, name.FieldGauge, name.FieldCable) >= 0 {
		return true
	}
	return slices.ContainsFunc(l.of, func(i int) bool {
		return l.HeadsDevice(i) || placehead.EndsInDesignator(l.Cols[i].Head) || l.Prof[i].Numbers < l.Prof[i].Filled
	})
}

// hasGaps reports whether some net does not reach every device: a table of figures has a figure everywhere.
func (l devices) hasGaps() bool {
	return slices.ContainsFunc(l.Src.Rows, func(r table.Row) bool {
		return !shape.IsText(r) && slices.ContainsFunc(l.of, func(i int) bool { return i >= len(r.Cells) || value.IsNothing(r.Cells[i]) })
	})
}
