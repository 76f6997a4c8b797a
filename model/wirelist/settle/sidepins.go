package settle

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
	from, to := l.Holds(l.Cols, name.FieldFrom), l.Holds(l.Cols, name.FieldTo)
	if from < 0 || to < 0 || from+1 == to || from+1 >= len(l.Cols) || to+1 >= len(l.Cols) ||
		l.Has(l.Cols, name.FieldFromPin, name.FieldToPin, name.FieldPin) {
		return
	}
	a, b := &l.Cols[from+1], &l.Cols[to+1]
	if a.Head == "" || table.Fold(a.Head) != table.Fold(b.Head) || a.Given || b.Given {
		return
	}
	for _, i := range []int{from + 1, to + 1} {
		f, p := l.Cols[i].Field, &l.Prof[i]
		if f != name.FieldKeep && f != name.FieldNumber && f != name.FieldNote && f != name.FieldContact || p.Filled > 0 &&
			!p.Most(l.ShortNames(i)) {
			return
		}
	}
	a.Field, b.Field = name.FieldFromPin, name.FieldToPin
}
