package commas

import (
	"slices"
	"strings"
)

// Parts parts a text at some signs, a comma most often, and leaves out what is empty. A comma between two digits is a decimal one:
//
//	red, 2,5 mm² → "red", " 2,5 mm²"        grün,0,75 → "grün", "0,75"
func Parts(text, signs string) (all []string) {
	const some = 4
	all = make([]string, 0, some)
	from := 0
	for i := 0; i < len(text); i++ {
		if strings.IndexByte(signs, text[i]) < 0 || IsDecimal(text, i) {
			continue
		}
		if i > from {
			all = append(all, text[from:i])
		}
		from = i + 1
	}
	if from < len(text) {
		all = append(all, text[from:])
	}
	return slices.Clip(all)
}

// IsDecimal reports whether the sign at a place of a text is a comma between two digits.
func IsDecimal(text string, i int) bool {
	return text[i] == ',' && i > 0 && i+1 < len(text) && isDigit(text[i-1]) && isDigit(text[i+1])
}

// At is the place of the first of some signs in a text that is no decimal comma, −1 where there is none.
func At(text, signs string) int {
	for i := 0; i < len(text); i++ {
		if strings.IndexByte(signs, text[i]) >= 0 && !IsDecimal(text, i) {
			return i
		}
	}
	return -1
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }
