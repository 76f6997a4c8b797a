package settle

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// namesLoads reports whether a column headed as a load holds the names of what the wires feed, and another column, which could be the
// names of the nets, has but the numbers of the outputs: that one is kept as text, a second name
// of the cavity.
//
//	Output | Pin | Load      | Runs to
//	OUT1   | A2  | Fuel pump | Tank plug 1
func (l *Look) namesLoads(i int) bool {
	p := &l.Prof[i]
	if p.Currents+p.Numbers > 0 || !p.Most(p.Words) || !p.Most(p.Long) || !l.Has(l.Cols, name.FieldTo, name.FieldToPin) {
		return false
	}
	for k := range l.Cols {
		c, q := &l.Cols[k], &l.Prof[k]
		if k == i || c.Field != name.FieldSignal || q.Filled == 0 {
			continue
		}
		if c.Given || !q.All(q.Ids) || !q.Unique() || !slices.ContainsFunc(name.Words(table.Fold(c.Head)), func(w string) bool {
			return l.Heads.Words[w].Field == name.FieldPin
		}) {
			return false
		}
		c.Field, c.Alias = name.FieldKeep, true
	}
	return true
}
