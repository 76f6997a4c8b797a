package table

import (
	"regexp"
	"strings"
)

// cavityLine is a line that begins with the name of a cavity and a sign that no table has between its cells, "3: horn, red" and
// "A1 - horn"; pinLine is one that begins with a word for a cavity and its number, "pin 3  horn, red"; toLine is one
// whose signs a table could have, and that says in words or by an arrow where the wire goes.
var (
	cavityLine = regexp.MustCompile(`^(?i:pin |way |cavity )?[A-Za-z]{0,2}[0-9]{0,3}[a-z]?(?:[:.)=] | ?[-–—] )\s*\S`)
	pinLine    = regexp.MustCompile(`^(?i:pin|way|cavity|kontakt|stift|broche|pino|patilla) [A-Za-z]{0,2}[0-9]{1,3}[a-z]?[ \t]+[\pL\d(]`)
	toLine     = regexp.MustCompile(`^(?i:pin |way |cavity )?(?:[A-Za-z]{0,2}[0-9]{1,3}[a-z]?|[A-Z])(?: ?[,|;]|[.):]) .*(?: to | -> | => | → )`)
)

// isLined reports whether half of the lines of a text, and three at least, are the points of a list without their dots.
func isLined(text string) bool {
	lined, filled := 0, 0
	for line := range strings.SplitSeq(text, "\n") {
		if line = strings.TrimSpace(line); line == "" {
			continue
		}
		if filled++; cavityLine.MatchString(line) || pinLine.MatchString(line) || toLine.MatchString(line) {
			lined++
		}
	}
	return lined > 2 && 2*lined >= filled
}
