package value

import (
	"strings"
)

// JoinNonEmpty joins those of some parts that are not empty.
func JoinNonEmpty(sep string, parts ...string) string {
	n, only := 0, ""
	for _, p := range parts {
		if p != "" {
			n, only = n+1, p
		}
	}
	if n < 2 {
		return only // most texts stand alone
	}
	all := make([]string, 0, n)
	for _, p := range parts {
		if p != "" {
			all = append(all, p)
		}
	}
	return strings.Join(all, sep)
}

// JoinSaid joins two cells; a dash that fills one of them is left out beside the other.
func JoinSaid(sep, a, b string) string {
	switch {
	case IsNothing(b):
		return a
	case IsNothing(a):
		return b
	}
	return a + sep + b
}

// IsNothing reports whether a cell is empty, or holds a dash that fills it.
func IsNothing(cell string) bool {
	if cell != "" && cell[0] > '.' && cell[0] < 0x80 {
		return false // most cells begin with a letter or a digit
	}
	return strings.Trim(cell, "-–—. ") == ""
}

// IsNotApplicable reports whether a cell says that its column tells nothing of this row: "n/a".
func IsNotApplicable(cell string) bool {
	return len(cell) <= 4 && (strings.EqualFold(cell, "n/a") || strings.EqualFold(cell, "n.a."))
}
