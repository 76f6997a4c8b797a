package prose

import (
	"strings"

	"contralay/model/wirelist/table"
)

// WithoutTextsBehind leaves out the sentences before the first heading of some rows above a table: they stand behind the table before it,
// and speak of that.
//
//   - Pin 4 - coil B- (black)
//
//     Pins 5 and 6 are empty.
//
//     ### Second motor
func WithoutTextsBehind(rows []table.Row) (kept, behind []table.Row) {
	n := 0
	for n < len(rows) && rows[n].Level == 0 {
		n++
	}
	if n == len(rows) {
		return rows, nil
	}
	for i, r := range rows {
		_, text := r.Filled()
		if i < n && len(r.Cells) == 1 && strings.HasSuffix(text, ".") && strings.Contains(text, " ") {
			behind = append(behind, r)
		} else {
			kept = append(kept, r)
		}
	}
	return kept, behind
}
