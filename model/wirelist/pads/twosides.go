package pads

import "strings"

// HasTwoSides reports whether as many of some cavities are numbers as are letters: those of an edge connector, of which a list counts
// the ways, two cavities in each.
func HasTwoSides(pins []string) bool {
	numbers, letters := 0, 0
	for _, p := range pins {
		switch {
		case p != "" && strings.Trim(p, "0123456789") == "":
			numbers++
		case len(p) == 1:
			letters++
		}
	}
	return numbers > 0 && numbers == letters && numbers+letters == len(pins)
}
