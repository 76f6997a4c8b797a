package toldcells

import (
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// HasHeads reports whether a sheet has a table with headings: a row of several cells right below them.
func HasHeads(h shape.Headings, rows []table.Row) bool {
	for i, r := range rows {
		if r.Ruled {
			return true
		}
		if i+1 == len(rows) || rows[i+1].Line > r.Line+1 {
			continue // "box out, 4 screws, order shells" is a text
		}
		if n, _ := rows[i+1].Filled(); n > 1 && h.IsHead(r) {
			return true
		}
	}
	return false
}
