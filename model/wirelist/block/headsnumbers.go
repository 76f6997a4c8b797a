package block

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// headsNumbers reports whether the first of some rows is a designator alone, and the rows below it count from one: the connector whose
// cavities they are, and no cavity itself.
//
//	P21 |      |
//	1   | Feed | red
//	2   | Horn | blue
func headsNumbers(rows []table.Row) bool {
	if len(rows) < 3 {
		return false
	}
	n, first := rows[0].Filled()
	if n != 1 || !name.IsDesignator(first) {
		return false
	}
	for i, want := range []string{"1", "2"} {
		if r := rows[i+1]; len(r.Cells) == 0 || r.Cells[0] != want {
			return false
		}
	}
	return true
}
