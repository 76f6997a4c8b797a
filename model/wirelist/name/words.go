package name

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"contralay/model/wirelist/value"
)

// Words parts a heading into words of letters and digits, "#" and marks left out.
func Words(s string) []string {
	s = strings.ReplaceAll(strings.ReplaceAll(s, "²", "2"), "mm^2", "mm2")
	if s == "p/n" {
		return []string{"p/n"}
	}
	if s != "" && value.IsLetter(s[0]) && s[0] < utf8.RuneSelf && s[len(s)-1] < utf8.RuneSelf {
		return lettersAndDigits(s) // most of them
	}
	if strings.Trim(s, " .:") == "#" {
		return []string{"#"}
	}
	if n := strings.Trim(s, " .:"); n == "№" || strings.HasSuffix(n, "°") && strings.Trim(n[:len(n)-len("°")], " .") == "n" {
		return []string{"no"} // "N°", "N.°"
	}
	if strings.Trim(s, " -–—=→⇒➔➜>") == "" && strings.ContainsAny(s, "→⇒➔➜>") {
		return []string{"to"} // an arrow heads where the wires go
	}
	return lettersAndDigits(s)
}

// lettersAndDigits are the words of a text, all signs left out.
func lettersAndDigits(s string) []string {
	all := make([]string, 0, 4)
	from := -1
	for i, r := range s {
		switch in := r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || unicode.IsLetter(r) || unicode.IsDigit(r); {
		case in && from < 0:
			from = i
		case !in && from >= 0:
			all, from = append(all, s[from:i]), -1
		}
	}
	if from >= 0 {
		all = append(all, s[from:])
	}
	return all
}

// BeginsWith reports whether the first sign of a text, those that are skipped left out, is one of some small letters or signs,
// or its capital; or a letter with a mark, or a sign of another script. It sees in most cells that no word of a list stands there.
func BeginsWith(cell, skipped, letters string) bool {
	for i := range len(cell) {
		switch c := cell[i]; {
		case strings.IndexByte(skipped, c) >= 0:
			continue
		case c >= 'A' && c <= 'Z':
			return strings.IndexByte(letters, c+'a'-'A') >= 0
		default:
			return c >= 0x80 || strings.IndexByte(letters, c) >= 0
		}
	}
	return false
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
