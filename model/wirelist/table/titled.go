package table

import (
	"strings"
	"unicode"
)

// The ranks of titles of a text, as those of Markdown: 1 is the highest.
const (
	titleDoubled = 1 // underlined with = or with *
	titleRuled   = 2 // underlined with any other sign
	titleSigned  = 3 // == between signs ==, [in brackets]
	titleCapital = 4 // IN CAPITALS
	titleAbove   = 5 // a short line right above a list or a table
)

// titled reads a line that names what stands below it.
//
//	Engine loom         LAMP PLUG (4 WAYS)       == Rear light ==       J4 (rear box)
//	===========                                                         1  red
func titled(d *document, i int) int {
	text := d.line(i)
	if len(text) > mostTitle || isRule(text) || isDrawnRule(text) || strings.HasPrefix(text, "|") || isPoint(text) {
		return 0
	}
	fields := len(gapped(d.lines[i]))
	alone := d.line(i-1) == "" || isRule(d.line(i-1)) || isDrawnRule(d.line(i-1))
	level, n := 0, 1
	under := d.line(i + 1)
	inner := strings.TrimSpace(strings.Trim(text, "=-*#~_<>[]:"))
	switch {
	case fields == 1 && alone && isRule(under) && !strings.Contains(under, " ") && len([]rune(under))+4 >= len([]rune(text))/2 &&
		!strings.HasPrefix(under, "."):
		level, n = titleRuled, 2
		if strings.ContainsAny(under[:1], "=*#") {
			level = titleDoubled
		}
	case isSigned(text) && inner != "":
		level, text = titleSigned, inner
	case !d.code && strings.HasPrefix(text, "#") && strings.HasPrefix(strings.TrimLeft(text, "#"), " ") && inner != "":
		level, text = min(len(text)-len(strings.TrimLeft(text, "#")), 6), inner
	case fields == 1 && alone && isCapitals(text):
		level = titleCapital
	case fields == 1 && alone && d.line(i+1) != "" && isAbove(text) && d.isListOrTable(i+1):
		level = titleAbove
	default:
		return 0
	}
	d.add(i, Row{Prose: true, Level: level, Cells: []string{marked(strings.TrimSpace(strings.TrimRight(text, ":")))}})
	return n
}

// mostTitle is how long a title may be, in bytes (no source).
const mostTitle = 80

// isSigned reports whether a text stands between the same signs, "== x ==", "*** x ***", or in square brackets.
func isSigned(text string) bool {
	if len(text) > 3 && text[0] == '[' && text[len(text)-1] == ']' {
		return !strings.ContainsAny(text[1:len(text)-1], "[]|")
	}
	const signs = "=-*#~_"
	front := len(text) - len(strings.TrimLeft(text, signs))
	back := len(text) - len(strings.TrimRight(text, signs))
	return front > 1 && back > 1 && len(text) > front+back && text[0] == text[len(text)-1]
}

// isCapitals reports whether a text is a few words in capitals, what stands in brackets left out.
func isCapitals(text string) bool {
	letters := 0
	deep := 0
	for _, r := range text {
		switch {
		case r == '(':
			deep++
		case r == ')':
			deep--
		case deep > 0:
		case unicode.IsLower(r):
			return false
		case unicode.IsLetter(r):
			letters++
		case strings.ContainsRune("=;|<>→.", r):
			return false
		}
	}
	return letters > 3 && len(strings.Fields(text)) <= 10
}

// isAbove reports whether a line can be the title of what stands right below it: a few words, no sentence.
func isAbove(text string) bool {
	return len(strings.Fields(text)) <= 8 && !strings.HasSuffix(text, ".") && !strings.ContainsAny(text, "=;|→") &&
		!strings.Contains(text, "->") && !startsWithCavity(text)
}

// startsWithCavity reports whether a line begins with a number, or a letter alone, and a sign behind it, as lines of pins do.
func startsWithCavity(text string) bool {
	folded := strings.ToLower(text)
	if strings.HasPrefix(folded, "pin ") || hasLeader(text) {
		return true
	}
	first, rest, more := strings.Cut(folded, " ")
	bare := strings.Trim(first, ".:)(")
	return more && (strings.Trim(bare, "0123456789") == "" || len(bare) == 1 && (bare != first || strings.HasPrefix(rest, "-")))
}

// isListOrTable reports whether a line is a point, a line of a table or of pins.
func (d *document) isListOrTable(i int) bool {
	text := d.line(i)
	return isPoint(text) || strings.HasPrefix(text, "•") || startsWithCavity(text) || len(gapped(text)) > 1 || isDrawnRule(text) ||
		d.isBars(i) || strings.Contains(text, "....") || strings.ContainsAny(text, "→") || strings.Contains(text, "->")
}
