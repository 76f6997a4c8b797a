package columned

import "strings"

// Commas counts the commas of a line that could part two cells: not those of a number, "0,75", and not one with a single blank behind it,
// which stands within a text, "Vane, supply".
func Commas(line string) (n int) {
	runes := []rune(line)
	at := func(i int) rune {
		if i < 0 || i >= len(runes) {
			return 0
		}
		return runes[i]
	}
	digit := func(r rune) bool { return r >= '0' && r <= '9' }
	quoted := false
	for i, r := range runes {
		switch {
		case r == '"':
			quoted = !quoted
		case r != ',' || quoted:
		case digit(at(i-1)) && digit(at(i+1)):
		case at(i+1) == ' ' && at(i+2) != ' ' && at(i+2) != 0:
		default:
			n++
		}
	}
	return n
}

// RuledBesideSigns reports whether a rule below headings says that a text is in columns, so that a sign that parts cells elsewhere, a
// semicolon or a bar, is of a text of its few lines that have one.
func RuledBesideSigns(text string) bool {
	_, _, ruled, _ := Heads(text)
	if !ruled {
		return false
	}
	lines, signs := 0, 0
	for line := range strings.SplitSeq(text, "\n") {
		if strings.TrimSpace(line) != "" {
			lines++
		}
		if strings.ContainsAny(line, ";\t|") {
			signs++
		}
	}
	return 3*signs <= lines
}
