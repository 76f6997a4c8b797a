package settle

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
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

// numbersOutputs reports whether a column headed as outputs or channels has short names, "Q1", and the cavities of these stand right
// behind it, below a plain word for cavities: it is a second name of each.
//
//	Output | Pin | Load
//	Q1     | A2  | Horn
func (l *Look) numbersOutputs(i int) bool {
	if i+1 >= len(l.Cols) || l.Cols[i+1].Field != name.FieldPin || l.Cols[i].Of != "" || l.Cols[i+1].Of != "" {
		return false
	}
	first, second := name.Words(table.Fold(l.Cols[i].Head)), name.Words(table.Fold(l.Cols[i+1].Head))
	p, q := &l.Prof[i], &l.Prof[i+1]
	if len(first) != 1 || len(second) == 0 || !name.IsPinWord(second[0]) || !p.All(p.Ids) || p.Numbers > 0 || !p.Unique() ||
		!q.Most(q.Cavities) || !q.Unique() || q.Filled < p.Filled {
		return false
	}
	return words.IsOutput(first[0])
}
