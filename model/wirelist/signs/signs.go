// Package signs looks for signs of a set in texts. Package strings does the same and makes the set at every call, which costs more than the
// look where a list has many cells and most are short.
package signs

// Set is a set of plain signs, those of ASCII. Nothing writes one once it is made.
type Set [256]bool

// Of is the set of the signs of a text.
func Of(ascii string) *Set {
	var s Set
	for i := range len(ascii) {
		s[ascii[i]] = true
	}
	return &s
}

// Index is the place of the first sign of the set in a text; −1 where it has none.
func (s *Set) Index(text string) int {
	for i := range len(text) {
		if s[text[i]] {
			return i
		}
	}
	return -1
}

// In reports whether a text has a sign of the set.
func (s *Set) In(text string) bool { return s.Index(text) >= 0 }

// Are reports whether a text has no other signs than those of the set; an empty one has none.
func (s *Set) Are(text string) bool {
	for i := range len(text) {
		if !s[text[i]] {
			return false
		}
	}
	return true
}

// Trim is a text without the signs of the set before and behind it.
func (s *Set) Trim(text string) string { return s.TrimRight(s.TrimLeft(text)) }

// TrimLeft is a text without the signs of the set before it.
func (s *Set) TrimLeft(text string) string {
	for text != "" && s[text[0]] {
		text = text[1:]
	}
	return text
}

// TrimRight is a text without the signs of the set behind it.
func (s *Set) TrimRight(text string) string {
	for text != "" && s[text[len(text)-1]] {
		text = text[:len(text)-1]
	}
	return text
}
