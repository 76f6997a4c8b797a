package columned

import "strings"

// WithoutEndBrackets is a line without what stands in brackets at its end, which says something of what is before: "**Left motor** (4
// pin)".
func WithoutEndBrackets(line string) string {
	if at := strings.LastIndex(line, " ("); at > 0 && strings.HasSuffix(line, ")") {
		return line[:at]
	}
	return line
}
