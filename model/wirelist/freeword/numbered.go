package freeword

import "strings"

// IsNumbered reports whether a cell is one plain word with a digit in it that can be no word of this package: of these a spare alone has a
// number behind it, "spare2".
//
//	P7    12    GND_4    C-3a
func IsNumbered(cell string) bool {
	const shortest = len("vara") // of the words for a spare
	letters, digits := 0, false
	for i := range len(cell) {
		switch c := cell[i]; {
		case c >= '0' && c <= '9':
			digits = true
		case c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z':
			if letters == i {
				letters++
			}
		case c != '_' && c != '-' && c != '.' || i == 0:
			return false
		}
	}
	return digits && (letters < shortest || strings.IndexByte("srzvtypSRZVTYP", cell[0]) < 0)
}
