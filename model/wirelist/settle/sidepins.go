package settle

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// sidePins takes two columns of one heading, the one behind the from and the other behind the to, for the cavities there,
// whatever the heading: it is an abbreviation of the shop. A word for cavities behind that for the side, "From terminal", is then of the
// strip that has them.
//
//	From  | Kl. | To   | Kl.        From terminal | Pos | To   | Pos
//	Panel | F1  | Pump | +          X4            | 3   | Pump | 1
func (l endColumns) sidePins() {
	from, to := l.sideColumn(name.FieldFrom, name.FieldFromPin), l.sideColumn(name.FieldTo, name.FieldToPin)
	if from < 0 || to < 0 || from+1 == to || from+1 >= len(l.Cols) || to+1 >= len(l.Cols) {
		return
	}
	a, b := &l.Cols[from+1], &l.Cols[to+1]
	if a.Head == "" || a.OfEnd != "" || table.Fold(a.Head) != table.Fold(b.Head) {
		return
	}
	if a.Given || b.Given || l.Cols[from].Given || l.Cols[to].Given {
		return
	}
	for i := range l.Cols {
		if f := l.Cols[i].Field; i != from && i != to && i != from+1 && i != to+1 && l.Prof[i].Filled > 0 &&
			(f == name.FieldFromPin || f == name.FieldToPin || f == name.FieldPin || f == name.FieldFrom || f == name.FieldTo) {
			return
		}
	}
	for _, i := range []int{from + 1, to + 1} {
		f, p := l.Cols[i].Field, &l.Prof[i]
		ofEnd := f == name.FieldFromPin || f == name.FieldToPin || f == name.FieldPin // by its heading, beside a cavity that is none
		if f != name.FieldKeep && f != name.FieldNumber && f != name.FieldNote && f != name.FieldContact && f != name.FieldWire &&
			!ofEnd && l.Cols[i].Known() || p.Filled > 0 && !p.Most(max(l.ShortNames(i), p.Cavities)) {
			return
		}
	}
	l.Cols[from].Field, l.Cols[to].Field = name.FieldFrom, name.FieldTo
	l.Cols[from].Of, l.Cols[to].Of = "", ""
	a.Field, b.Field = name.FieldFromPin, name.FieldToPin
}

// sideColumn is the one column of a side, by a heading that says the side; −1 where there is none, or it has cavities of its own.
func (l endColumns) sideColumn(side, pin name.Field) int {
	if i := l.Holds(l.Cols, side); i >= 0 {
		if k := l.Holds(l.Cols, pin); k >= 0 && k != i+1 {
			return -1
		}
		return i
	}
	return l.Holds(l.Cols, pin)
}
