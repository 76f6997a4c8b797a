package bothends

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// look is the columns of a table of which none holds cavities.
type look struct {
	cols []shape.Column
	prof []column.Profile
	rows []table.Row
}

// Settle takes a column for both ends where each of its cells has an arrow between two texts: one that nobody knows, or the only one of
// ends, whatever side its heading says. Beside it, or beside both ends, a column that is headed as runs and has a number in each row
// numbers them. No column of the table holds cavities.
//
//	Run | Between                | Wire
//	1   | Plug L1 → Breaker 1    | 6 AWG black
//	2   | Breaker 2 → Heater top | 8 AWG black
func Settle(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	l := look{cols, prof, rows}
	from, to, both, pins := 0, 0, -1, false
	numbers, ok := l.runNumbers()
	if !ok {
		return
	}
	for i := range cols {
		switch f := cols[i].Field; {
		case f == name.FieldFromPin || f == name.FieldToPin:
			pins = true
		case f == name.FieldFrom:
			from, both = from+1, i
		case f == name.FieldTo:
			to, both = to+1, i
		case both < 0 && (f == name.FieldKeep || f == name.FieldSignal) && l.areRuns(i):
			both = i
		}
	}
	switch {
	case numbers >= 0 && (pins || from > 0 && to > 0):
		l.number(numbers)
	case pins || from+to > 1 || both < 0 || !l.areRuns(both):
	default:
		cols[both].Field = name.FieldRun
		if numbers >= 0 {
			l.number(numbers)
		}
	}
}

// number takes a column for the numbers of the wires, unless another has them; one that holds nothing but sizes has none.
func (l look) number(numbers int) {
	l.cols[numbers].Field = name.FieldNumber
	for i, c := range l.cols {
		if p := &l.prof[i]; c.Field == name.FieldWire && p.Filled > 0 {
			if c.Given || !p.All(p.Sizes) || l.sized() {
				return
			}
			l.cols[i].Field = name.FieldGauge
		}
	}
	l.cols[numbers].Field = name.FieldWire
}

// sized reports whether a column is of sizes and holds some.
func (l look) sized() bool {
	for i, c := range l.cols {
		if c.Field == name.FieldGauge && l.prof[i].Filled > 0 {
			return true
		}
	}
	return false
}

// areRuns reports whether every cell of a column, and more than one, has both ends of a wire: beyond doubt in most of them, and two texts
// in the others, where an end is a splice or a spare.
func (l look) areRuns(i int) bool {
	n, sure := 0, 0
	for _, r := range l.rows[:min(len(l.rows), column.MostLooked)] {
		if i >= len(r.Cells) {
			continue
		}
		if shape.IsRun(r.Cells[i]) {
			sure++
			n++
		} else if _, _, ok := shape.SplitRun(r.Cells[i]); ok {
			n++
		}
	}
	return !l.cols[i].Given && sure > 1 && 2*sure >= n && n == l.prof[i].Filled
}

// runNumbers is the one column headed as runs where each of its cells is a number of one, and none comes twice; −1 where no column is
// headed so. ok is false where one is, and holds something else.
func (l look) runNumbers() (at int, ok bool) {
	at = -1
	for i, c := range l.cols {
		if c.Field != name.FieldRun {
			continue
		}
		if p := &l.prof[i]; at >= 0 || c.Given || !p.All(p.Ids) || p.Distinct != p.Filled || p.Ends > 0 {
			return -1, false
		}
		at = i
	}
	return at, true
}
