package settle

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// pinNames keeps what the device calls each cavity as a text, beside its number and another column of names: it is a second name of
// the one cavity.
//
//	Name | Pin # | Pin name
//	SDA  | 3     | GP2
func (l *Look) pinNames() {
	if l.Holds(l.Cols, name.FieldPin) < 0 {
		return
	}
	for i := range l.Cols {
		c := &l.Cols[i]
		w := name.Words(table.Fold(c.Head))
		if c.Given || c.Field != name.FieldSignal || len(w) != 2 || w[0] != "pin" || !l.another(i, name.FieldSignal) {
			continue
		}
		c.Field, c.Alias = name.FieldKeep, true
	}
}
