package columned

import (
	"regexp"
	"strings"
)

// ledLine is a line that begins with a cavity and has a row of dots or strokes before the last of its texts.
var ledLine = regexp.MustCompile(`^\s*(?:[A-Z]|[A-Z]?\d{1,3})[.):]?\s+\pL.*(?:\.{4,}|…{2,}|_{4,}|·{4,}).*\S`)

// sectionLine is a line that begins with a cavity and ends with a section in mm² whose decimals a comma parts, its only one.
var sectionLine = regexp.MustCompile(`^\s*\d{1,3}[.):]?\s+\pL[^,;|\t]*\s\d{1,2},\d{1,2}(?:\s?(?:mm²|mm2|qmm|mmq))?\s*$`)

// Led reports whether three lines of a text have dots that lead from the name of a wire to what it is, or end with a section that has
// the only comma of the line: its commas and gaps part no cells.
//
//	A  bow light ....... 16ga red          1 Bremslicht rot 1,5
func Led(text string) bool {
	const least = 3 // lines (no source)
	n := 0
	for line := range strings.SplitSeq(text, "\n") {
		if hasDots(line) && ledLine.MatchString(line) ||
			strings.IndexByte(line, ',') > 0 && sectionLine.MatchString(line) {
			n++
		}
	}
	return n >= least
}

// hasDots reports whether a line can have a row of dots or strokes.
func hasDots(line string) bool {
	return strings.Contains(line, "....") || strings.Contains(line, "____") ||
		strings.Contains(line, "……") || strings.Contains(line, "····")
}
