package column

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// CouldBeNames reports whether a column that nobody knows can hold the names of the wires: nearly all rows have one of their own, in
// words, and its heading asks for nothing else. rows is how many the table has; grouped: only the rows that begin a group have one.
func CouldBeNames(head string, p *Profile, rows int, grouped bool) bool {
	w := name.Words(table.Fold(head))
	if len(w) == 0 || pinword.Is(w[len(w)-1]) {
		return false
	}
	return !name.IsRemark(w) && !name.IsSpent(head) && !sidehead.IsFitting(table.Fold(head)) && !words.SaysWork(w) &&
		(5*p.Filled >= 4*rows || grouped) &&
		5*p.Distinct >= 3*p.Filled && 2*p.Numbers <= p.Filled && (4*p.Prose <= p.Filled || grouped) &&
		4*(p.States+p.Changes) <= p.Filled && p.Colours+p.Lengths == 0 && p.Ends == 0
}
