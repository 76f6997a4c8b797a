package grid

import (
	"strconv"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// goesOn reports whether the first columns of some groups of headings are the numbers of one connector that go on from group to group:
// all of them together count from one, and none comes twice. Then each group is a part of its pins, whatever the other columns are.
//
//	pin | remark | colour | pin | remark | colour
//	1   | lower  | red    | 3   | upper  | blue
//	2   | lower  | black  | 4   | upper  | grey
func goesOn(h shape.Headings, t *table.Table, head table.Row, starts []int, group table.Row) bool {
	const least = 4 // cavities (no source)
	if h.PinColumn(group) != 0 {
		return false
	}
	seen, below, most := map[int]bool{}, false, 0
	for _, r := range t.Rows {
		if r.Line == head.Line {
			below = true
			continue
		}
		if n, _ := r.Filled(); !below || n < 2 {
			continue
		}
		for _, at := range starts {
			if at >= len(r.Cells) || r.Cells[at] == "" {
				continue
			}
			pin, err := strconv.Atoi(r.Cells[at])
			if err != nil || pin < 1 || seen[pin] {
				return false
			}
			seen[pin] = true
			most = max(most, pin)
		}
	}
	return len(seen) >= least && most == len(seen)
}
