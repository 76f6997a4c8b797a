package reading

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// sidePins takes two columns of one heading, the one behind the from and the other behind the to, for the cavities there,
// whatever the heading: it is an abbreviation of the shop.
//
//	From  | Kl. | To   | Kl.
//	Panel | F1  | Pump | +
func (l endColumns) sidePins() {
	from, to := l.holds(l.cols, name.FieldFrom), l.holds(l.cols, name.FieldTo)
	if from < 0 || to < 0 || from+1 == to || from+1 >= len(l.cols) || to+1 >= len(l.cols) ||
		l.has(l.cols, name.FieldFromPin, name.FieldToPin, name.FieldPin) {
		return
	}
	a, b := &l.cols[from+1], &l.cols[to+1]
	if a.Head == "" || table.Fold(a.Head) != table.Fold(b.Head) || a.Given || b.Given {
		return
	}
	for _, i := range []int{from + 1, to + 1} {
		f, p := l.cols[i].Field, &l.prof[i]
		if f != name.FieldKeep && f != name.FieldNumber && f != name.FieldNote && f != name.FieldContact || p.Filled > 0 &&
			!p.Most(l.shortNames(i)) {
			return
		}
	}
	a.Field, b.Field = name.FieldFromPin, name.FieldToPin
}
