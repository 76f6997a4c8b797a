package catalogue

import (
	"cmp"
	"strings"
)

// compareNames orders names as a shelf does: runs of digits by their number, so
// that AS23053/5 comes before AS23053/13, and the rest by letter.
func compareNames(a, b string) int {
	x, y := a, b
	for x != "" && y != "" {
		dx, dy := digits(x), digits(y)
		if dx > 0 && dy > 0 {
			if c := compareDigits(x[:dx], y[:dy]); c != 0 {
				return c
			}
			x, y = x[dx:], y[dy:]
			continue
		}
		if x[0] != y[0] {
			return cmp.Compare(x[0], y[0])
		}
		x, y = x[1:], y[1:]
	}
	if c := cmp.Compare(len(x), len(y)); c != 0 {
		return c
	}
	return cmp.Compare(a, b) // "7" and "07" are different names
}

// digits is the length of the run of digits that s starts with.
func digits(s string) int {
	n := 0
	for n < len(s) && s[n] >= '0' && s[n] <= '9' {
		n++
	}
	return n
}

// compareDigits compares two runs of digits of any length by their number.
func compareDigits(a, b string) int {
	a, b = strings.TrimLeft(a, "0"), strings.TrimLeft(b, "0")
	if c := cmp.Compare(len(a), len(b)); c != 0 {
		return c
	}
	return cmp.Compare(a, b)
}

// compareTubes orders by kind, then bore, then id.
func compareTubes(a, b Tube) int {
	return cmp.Or(
		compareNames(a.Kind, b.Kind),
		cmp.Compare(a.SuppliedMM, b.SuppliedMM),
		compareNames(a.ID, b.ID),
	)
}
