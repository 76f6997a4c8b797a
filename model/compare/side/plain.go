package side

import (
	"strings"
	"unicode"
)

// Plain is a name without case, blanks and the signs that part words: "INJ 1", "inj-1" and "Inj_1" are
// one. What tells two names apart stays: a sign at the end of a word (Temp+ is not Temp-), a sign
// between two digits (X1-1 is not X11, and 3.3 V is not 33 V), and what negates (~RESET, !RESET).
func Plain(s string) string {
	all := []rune(s)
	at := func(i int) rune {
		if i < 0 || i >= len(all) {
			return ' '
		}
		return all[i]
	}
	word := func(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }
	var b strings.Builder
	digit, parted := false, rune(0) // what came last is a digit, and then this sign
	for i, r := range all {
		switch {
		case unicode.IsDigit(r):
			if digit && parted != 0 {
				b.WriteRune(parted)
			}
			b.WriteRune(r)
			digit, parted = true, 0
		case word(r):
			b.WriteRune(unicode.ToLower(r))
			digit, parted = false, 0
		case r == '+' || (r == '-' || r == '−') && isSign(word, at(i-1), at(i+1), all[i+1:]):
			if r == '−' {
				r = '-'
			}
			b.WriteRune(r)
			digit, parted = false, 0
		case strings.ContainsRune("~!#%&<>=$^", r):
			b.WriteRune(r)
			digit, parted = false, 0
		case parted == 0 || unicode.IsSpace(parted):
			if parted = r; unicode.IsSpace(r) {
				parted = ' '
			}
		}
	}
	if b.Len() == 0 {
		return strings.TrimSpace(s)
	}
	return b.String()
}

// isSign reports whether a dash is a minus, and parts no words: at the end of a word ("Temp- 2",
// "Temp (-)"), or before a number ("-12 V").
func isSign(word func(rune) bool, before, behind rune, rest []rune) bool {
	if word(before) && !word(behind) || !word(before) && unicode.IsDigit(behind) {
		return true
	}
	for _, r := range rest {
		if word(r) {
			return false
		}
	}
	return true
}
