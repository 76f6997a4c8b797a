package columned

import (
	"regexp"
	"strings"
)

// leadTitle is a line that names the things at both ends of a lead, with an arrow between; leadLine is one below it, which has a cavity
// at either side of its arrow.
var (
	leadTitle = regexp.MustCompile(`^\s*(?:[#*-]+\s+)?\pL.*?\S\s+(?:[-=–—]*>|→|⇒)\s+.*\pL{2}`)
	leadLine  = regexp.MustCompile(`^\s*(?:(?i:pin|way|terminal) )?[A-Za-z]{0,2}[0-9]{0,3}[a-z]?[.:)]?\s.*(?:[-=–—]*>|→|⇒)\s*[A-Za-z]{0,2}[0-9]{1,3}\b`)
)

// IsLeads reports whether a text tells leads, each by a title with an arrow and two lines or more below it: its gaps part no columns,
// and the arrows are not there to fill a gap.
func IsLeads(text string) bool {
	lines, above := 0, false
	for line := range strings.SplitSeq(text, "\n") {
		switch {
		case strings.TrimSpace(line) == "" || strings.Trim(line, "-=_ \t") == "":
		case leadLine.MatchString(line):
			if above {
				lines++
			}
		case leadTitle.MatchString(line):
			above = true
		case lines < 2:
			above, lines = false, 0
		}
		if lines > 1 {
			return true
		}
	}
	return false
}
