package reading

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// pinNames keeps what the device calls each cavity as a text, beside its number and another column of names: it is a second name of
// the one cavity.
//
//	Name | Pin # | Pin name
//	SDA  | 3     | GP2
func (l *look) pinNames() {
	if l.holds(l.cols, name.FieldPin) < 0 {
		return
	}
	for i := range l.cols {
		c := &l.cols[i]
		w := name.Words(table.Fold(c.Head))
		if c.Given || c.Field != name.FieldSignal || len(w) != 2 || w[0] != "pin" || !l.another(i, name.FieldSignal) {
			continue
		}
		c.Field, c.Alias = name.FieldKeep, true
	}
}
