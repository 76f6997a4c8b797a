package block

import "contralay/model/wirelist/sidehead"

// underSides takes a row for the second of two rows of headings, where the row above names both ends of the wires and is of no
// table yet.
func (f asides) underSides(i int) bool {
	rows := f.t.Rows
	if i == 0 || f.h.HeadLine() > 0 || sidehead.Parts(rows[i-1], rows[i], f.h.Words) == nil {
		return false
	}
	group := rows[i-1]
	c := f.current
	if c == nil || len(c.Head) != 1 || c.Head[0].Line != group.Line {
		switch n := len(f.pending); {
		case n > 0 && f.pending[n-1].Line == group.Line:
			f.pending = f.pending[:n-1]
		case c != nil && len(c.Rows) > 0 && c.Rows[len(c.Rows)-1].Line == group.Line:
			c.Rows = c.Rows[:len(c.Rows)-1]
		default:
			return false
		}
		f.begin(group, i-1)
	}
	f.current.Head = append(f.current.Head, rows[i])
	return true
}
