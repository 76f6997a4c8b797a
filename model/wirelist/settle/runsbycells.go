package settle

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// runsByCells takes a column for both ends where each of its cells has an arrow between two texts: one that nobody knows, or the only
// one of ends, whatever side its heading says. Beside it, or beside both ends, a column that is headed as runs and has a number in each row
// numbers them.
//
//	Run | Between                | Wire
//	1   | Plug L1 → Breaker 1    | 6 AWG black
//	2   | Breaker 2 → Heater top | 8 AWG black
func (l *Look) runsByCells() {
	numbers := l.runNumbers()
	if numbers >= 0 && l.Has(l.Cols, name.FieldFrom) && l.Has(l.Cols, name.FieldTo) {
		l.numberRuns(numbers)
		return
	}
	if l.AnotherPin(-1) || l.Has(l.Cols, name.FieldFromPin, name.FieldToPin) || numbers < 0 && l.Has(l.Cols, name.FieldRun) {
		return
	}
	sides, both := 0, -1
	for i := range l.Cols {
		switch c := &l.Cols[i]; {
		case c.Field == name.FieldFrom || c.Field == name.FieldTo:
			sides++
			both = i
		case both < 0 && (c.Field == name.FieldKeep || c.Field == name.FieldSignal) && l.areRuns(i):
			both = i
		}
	}
	if sides > 1 || both < 0 || !l.areRuns(both) {
		return
	}
	l.Cols[both].Field = name.FieldRun
	if numbers >= 0 {
		l.numberRuns(numbers)
	}
}

// numberRuns takes a column for the numbers of the wires, unless another has them; one that holds nothing but sizes has none.
func (l *Look) numberRuns(numbers int) {
	l.Cols[numbers].Field = name.FieldNumber
	for i, c := range l.Cols {
		if p := &l.Prof[i]; c.Field == name.FieldWire && p.Filled > 0 {
			if c.Given || !p.All(p.Sizes) || l.another(i, name.FieldGauge) {
				return
			}
			l.Cols[i].Field = name.FieldGauge
		}
	}
	l.Cols[numbers].Field = name.FieldWire
}

// areRuns reports whether every cell of a column, and more than one, has both ends of a wire.
func (l *Look) areRuns(i int) bool {
	n := column.Runs(l.Src.Rows, i)
	return !l.Cols[i].Given && n > 1 && n == l.Prof[i].Filled
}

// runNumbers is the one column headed as runs where each of its cells is a number of one, and none comes twice; −1 where it is none.
func (l *Look) runNumbers() int {
	of := func(c shape.Column) bool { return c.Field == name.FieldRun }
	i := slices.IndexFunc(l.Cols, of)
	if i < 0 || l.Cols[i].Given || slices.ContainsFunc(l.Cols[i+1:], of) {
		return -1
	}
	if p := &l.Prof[i]; !p.All(p.Ids) || p.Distinct != p.Filled || p.Ends > 0 {
		return -1
	}
	return i
}
