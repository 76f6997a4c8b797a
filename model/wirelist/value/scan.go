package value

import (
	"strings"
)

// Token is one piece of a cell: a number, a word, or a sign.
type Token struct {
	Kind byte // '0' number, 'a' word, or the sign itself
	Text string
}

// Scan parts a folded text into tokens. A number is digits with marks and strokes
// inside it: "0,5", "24-1/2" is three. What × means is written x; ² and ³ are digits
// of the word before them.
func Scan(s string) []Token { return scan(nil, s) }

// room is for the tokens of most cells. Where they go no further than the function that asks for them, it is no work to make.
type room [16]Token

// scan is Scan into room that is there.
func scan(all []Token, s string) []Token {
	if !isPlain(s) {
		s = strings.Map(PlainSign, s)
	}
	if s == "" {
		return nil
	}
	for i := 0; i < len(s); {
		j := i
		switch c := s[i]; {
		case c == ' ':
			i++
			continue
		case IsDigit(c) || (c == '.' || c == ',') && i+1 < len(s) && IsDigit(s[i+1]):
			for j < len(s) && (IsDigit(s[j]) || (s[j] == '.' || s[j] == ',' || s[j] == '/') && j+1 < len(s) && IsDigit(s[j+1])) {
				j++
			}
			all = append(all, Token{'0', s[i:j]})
		case IsLetter(c):
			for j < len(s) && IsLetter(s[j]) {
				j++
			}
			word := s[i:j]
			if rest := strings.TrimPrefix(s[j:], "^"); (word == "mm" || word == "qmm") && strings.HasPrefix(rest, "2") &&
				(len(rest) == 1 || !IsDigit(rest[1])) {
				j = len(s) - len(rest) + 1
				word = "mm2"
			}
			all = append(all, Token{'a', word})
		default:
			j++
			all = append(all, Token{c, s[i:j]})
		}
		i = j
	}
	return all
}

// isPlain reports whether a text is of plain letters and signs alone.
func isPlain(s string) bool {
	for i := range len(s) {
		if s[i] >= 0x80 {
			return false
		}
	}
	return true
}

// PlainSign is the ASCII sign for one that a word processor writes in its place.
func PlainSign(r rune) rune {
	switch r {
	case '×':
		return 'x'
	case '²':
		return '2'
	case '·':
		return '*'
	case 'µ':
		return 'u'
	case '″', '”', '“':
		return '"'
	case '′', '’':
		return '\''
	}
	return r
}

// IsDigit reports whether c is one of 0 to 9.
func IsDigit(c byte) bool { return c >= '0' && c <= '9' }

// HasDigit reports whether a text has one of 0 to 9.
func HasDigit(s string) bool {
	for i := range len(s) {
		if IsDigit(s[i]) {
			return true
		}
	}
	return false
}

// IsLetter takes every byte of a letter beyond ASCII too, so that one stays whole.
func IsLetter(c byte) bool { return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= 0x80 }
