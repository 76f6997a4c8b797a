package name

import (
	"strings"
	"unicode"

	"contralay/model/wirelist/value"
)

// Words parts a heading into words of letters and digits, "#" and marks left out.
func Words(s string) []string {
	s = strings.ReplaceAll(strings.ReplaceAll(s, "²", "2"), "mm^2", "mm2")
	if strings.Trim(s, " .:") == "#" {
		return []string{"#"}
	}
	if s == "p/n" {
		return []string{"p/n"}
	}
	return strings.FieldsFunc(s, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
}

// CutWord takes the first word of a folded text, signs behind it left out.
func CutWord(s string) (word, rest string, found bool) {
	i := 0
	for i < len(s) && value.IsLetter(s[i]) {
		i++
	}
	return s[:i], s[i:], i > 0
}

// IsOneWord reports whether a text has no blank and some letter or digit.
func IsOneWord(s string) bool { return s != "" && !strings.Contains(s, " ") && len(Words(s)) > 0 }
