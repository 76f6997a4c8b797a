package wirelist

import "strings"

// token is one piece of a cell: a number, a word, or a sign.
type token struct {
	kind byte // '0' number, 'a' word, or the sign itself
	text string
}

// scan parts a folded text into tokens. A number is digits with marks and strokes
// inside it: "0,5", "24-1/2" is three. What × means is written x; ² and ³ are digits
// of the word before them.
func scan(s string) []token {
	s = strings.NewReplacer("×", "x", "²", "2", "·", "*", "µ", "u", "″", `"`, "”", `"`, "′", "'", "’", "'").Replace(s)
	var all []token
	for i := 0; i < len(s); {
		j := i
		switch c := s[i]; {
		case c == ' ':
			i++
			continue
		case isDigit(c) || (c == '.' || c == ',') && i+1 < len(s) && isDigit(s[i+1]):
			for j < len(s) && (isDigit(s[j]) || (s[j] == '.' || s[j] == ',' || s[j] == '/') && j+1 < len(s) && isDigit(s[j+1])) {
				j++
			}
			all = append(all, token{'0', s[i:j]})
		case isLetter(c):
			for j < len(s) && isLetter(s[j]) {
				j++
			}
			word := s[i:j]
			if j < len(s) && (s[j] == '2' || s[j] == '^' && j+1 < len(s) && s[j+1] == '2') && (word == "mm" || word == "qmm") && (j+1 == len(s) || !isDigit(s[j+1])) {
				j += strings.IndexByte(s[j:], '2') + 1
				word = "mm2"
			}
			all = append(all, token{'a', word})
		default:
			j++
			all = append(all, token{c, s[i:j]})
		}
		i = j
	}
	return all
}

func isDigit(c byte) bool { return c >= '0' && c <= '9' }

// isLetter takes every byte of a letter beyond ASCII too, so that one stays whole.
func isLetter(c byte) bool { return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= 0x80 }
