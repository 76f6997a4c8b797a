package settle

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// soleName takes the one column of words that nobody knows, in a list of both ends that has no other names, for the names.
//
//	Run          | Wire         | Why
//	A1 -> Pump 2 | 20 ga orange | pump feed
func soleName(l *Look) {
	if len(l.Src.Head) == 0 || l.Has(l.Cols, name.FieldSignal) || !l.Has(l.Cols, name.FieldFrom, name.FieldRun, name.FieldFromPin) {
		return
	}
	var of *shape.Column
	for i := range l.Cols {
		c, p := &l.Cols[i], &l.Prof[i]
		if c.Field != name.FieldKeep || c.Given || c.OfEnd != "" || p.Filled == 0 {
			continue
		}
		if of != nil {
			return
		}
		if of = c; !column.CouldBeNames(c.Head, p, len(l.Src.Rows), l.headsGroups(i)) {
			return
		}
	}
	if of != nil {
		of.Field = name.FieldSignal
	}
}
