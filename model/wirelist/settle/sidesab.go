package settle

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// sidesAB reads the two columns headed "a" and "b" as the two ends, where no other heading says one.
//
//	wire | col | a    | b
//	w1   | bk  | J1-1 | P3-2
func (l *Look) sidesAB() {
	a, b := -1, -1
	for i, c := range l.Cols {
		switch f := table.Fold(c.Head); {
		case c.Given || l.Prof[i].Filled == 0:
		case f == "a" && a < 0:
			a = i
		case f == "b" && b < 0:
			b = i
		case c.Field == name.FieldFrom || c.Field == name.FieldTo || c.Field == name.FieldPin || c.Field == name.FieldRun:
			return
		}
	}
	if a >= 0 && b >= 0 && l.Prof[a].Numbers == 0 && l.Prof[b].Numbers == 0 {
		l.Cols[a].Field, l.Cols[b].Field = name.FieldFrom, name.FieldTo
	}
}
