package columned

import "strings"

// Numbered counts the lines that are a number, alone or behind one word, or one short word, and a colon, a sign of equality or a dash
// between blanks with something behind it: the points of a list. apart: a blank must stand behind the sign, as none does in the time
// of a day.
func Numbered(lines []string, apart bool) (n int) {
	for _, l := range lines {
		at := strings.IndexAny(l, ":=")
		for _, dash := range []string{" - ", " – ", " — "} {
			if i := strings.Index(l, dash); i > 0 && (at < 0 || i < at) {
				at = i
			}
		}
		if at < 0 || at > 16 || strings.Contains(l[:at], ",") || strings.TrimSpace(l[at+1:]) == "" ||
			apart && l[at] != ' ' && l[at+1] != ' ' {
			continue
		}
		f := strings.Fields(l[:at])
		if len(f) > 0 && len(f) < 3 && strings.Trim(f[len(f)-1], "0123456789") == "" || len(f) == 1 && len(f[0]) <= 8 && l[at+1] == ' ' {
			n++
		}
	}
	return n
}
