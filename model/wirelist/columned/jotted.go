package columned

import (
	"regexp"
	"strings"
)

// jottedLine is a line that begins with a terminal and its device, or with a number and a size behind it, and has an arrow behind more
// than that; jottedEnd is one that begins with either.
//
//	KB2-1  red 16awg  lamp feed > lamp box +  (behind the seat)
var (
	jottedEnd  = regexp.MustCompile(`^\s*(?:[-*•]\s+)?(?:(?i:pin )?\d{1,3}[.)]?\s|` + jottedDevice + `\s)`)
	jottedLine = regexp.MustCompile(`^\s*(?:[-*•]\s+)?(?:` + jottedDevice + `\s+[^-=<>→⇒\s].*|(?i:pin )?\d{1,3}[.)]?\s.*` +
		`\d ?(?i:awg|ga|mm²|mm2|qmm).*)(?:\s>\s|[-=]>|→|⇒)`)
)

// jottedDevice is the device and its terminal that such a line begins with.
const jottedDevice = `[A-Za-z]{1,5}\d{0,3}[-:./ ](?:(?i:pin|way|kl\.?) )?[A-Za-z]?\d{1,3}[a-z]?,?`

// jotted gives a text of such lines with a tab in the place of each gap in them; ok is false where there are less than three, or most of
// the lines that begin with a terminal have no gap, or no arrow.
func jotted(text string) (parted string, ok bool) {
	if strings.ContainsAny(text, ";|") {
		return text, false
	}
	lines := strings.Split(text, "\n")
	ends, gaps, arrows := 0, 0, 0
	for i, line := range lines {
		cells := Gapped(line)
		if !jottedEnd.MatchString(line + " ") {
			lines[i] = strings.Join(strings.Fields(line), " ")
			continue
		}
		ends++
		if jottedLine.MatchString(line) {
			arrows++
			if len(cells) > 1 {
				gaps++
			}
		}
		parts := make([]string, len(cells))
		for k, c := range cells {
			parts[k] = c.Text
		}
		lines[i] = strings.Join(parts, "\t")
	}
	if arrows < 3 || 4*gaps < 3*arrows || 2*arrows < ends {
		return text, false
	}
	return strings.Join(lines, "\n"), true
}
