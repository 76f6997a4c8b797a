package words

import (
	"strings"

	"contralay/model/wirelist/name"
)

// Siblings are the places of a text that names nothing but several of one kind, "F4, F5", "H1 & H2"; nil for any other text. "X1, A2" is a
// plug and its cavity.
func Siblings(text string) []string {
	if !strings.ContainsAny(text, ",;&") {
		return nil // most texts
	}
	var all []string
	for part := range strings.FieldsFuncSeq(text, func(r rune) bool { return strings.ContainsRune(",;&", r) }) {
		part = strings.TrimSpace(part)
		if !name.IsDesignator(part) || letters(part) != letters(text) {
			return nil
		}
		all = append(all, part)
	}
	if len(all) < 2 {
		return nil
	}
	return all
}

// letters are those that a designator begins with.
func letters(text string) string {
	return text[:len(text)-len(strings.TrimLeft(text, "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz"))]
}
