package settle

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
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
		if of = c; c.Head == "" || name.IsRemark(name.Words(table.Fold(c.Head))) || name.IsSpent(c.Head) ||
			sidehead.IsFitting(table.Fold(c.Head)) || words.SaysWork(name.Words(table.Fold(c.Head))) ||
			5*p.Filled < 4*len(l.Src.Rows) && !l.headsGroups(i) ||
			5*p.Distinct < 3*p.Filled || 2*p.Numbers > p.Filled || 4*p.Prose > p.Filled && !l.headsGroups(i) ||
			4*(p.States+p.Changes) > p.Filled || p.Colours+p.Lengths > 0 || p.Ends > 0 {
			return
		}
	}
	if of != nil {
		of.Field = name.FieldSignal
	}
}
