package pieces

import (
	"strconv"

	"contralay/model/wirelist/table"
)

// leap is how many cavities a list leaves out between two at most (no source).
const leap = 6

// countCavities reports whether lines that begin with a bare number have cavities there, and no quantities: below each heading they
// count up from 1, or are those of a relay.
//
//	white plug, 3 way               relay 2
//	1 rev light, blue 20            30 battery, red 12
//	2 fog, yellow 20                86 ign fuse 2, red 20
//	3 earth, black 16               87 fan, red/blue 12
func (all lines) countCavities(t *table.Table) bool {
	if all.told < least || all.failed > 0 || all.pins < all.n || all.told < all.n {
		return false
	}
	last, runs := 0, 0
	for _, r := range t.Rows {
		l := all.of[r.Line]
		if l == nil {
			last = 0
			continue
		}
		n, err := strconv.Atoi(l.pin)
		relay := n == 30 || n >= 85 && n <= 88
		switch {
		case err != nil && l.pin != "87a" && l.pin != "87b":
			return false
		case last == 0 && (n == 1 || relay):
			runs++
		case last == 0 || n <= last || n > last+leap && !relay && err == nil:
			return false
		}
		if err == nil {
			last = n
		}
	}
	return runs > 0
}
