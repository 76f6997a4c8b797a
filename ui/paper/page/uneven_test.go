package page

import (
	"strings"
	"testing"

	"contralay/model/unit"
)

// How many uneven rows go into two columns under a head of 3, by hand: the second column begins with the row behind the first one's last.
func TestUnevenRowsInColumns(t *testing.T) {
	for _, c := range []struct {
		rows string
		room unit.Millimetre
		now  int
		high unit.Millimetre
	}{
		{"2 11 6 7 5 5", 16, 4, 16}, {"2 11 6 8 5 5", 16, 3, 16}, {"13 1 12 1 1", 16, 3, 16}, {"13 1 13 1", 15.9, 0, 0}, {"1 14 1 1",
			16, 1, 4},
		{"4+ 9 4+ 9 1", 16, 4, 16}, {"4 9+ 9 4 1", 16, 1, 7},
	} {
		x := &Cut{Rows: rowsOf(c.rows), Columns: 2, HeadHigh: 3, Wide: 40, Open: "<", Head: "h", Close: ">"}
		text, high, rest := x.part(c.room)
		left := 0
		if rest != nil {
			left = len(rest.Rows)
		}
		if n := strings.Count(string(text), "#"); n != c.now || high != c.high || n+left != len(x.Rows) {
			t.Errorf("%s on %v: %d rows, %v high, %d left; want %d, %v", c.rows, c.room, n, high, left, c.now, c.high)
		}
	}
}
