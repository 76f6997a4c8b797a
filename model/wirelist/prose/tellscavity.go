package prose

import "strings"

// TellsCavity reports whether a line begins with a pole or the short name of a cavity, and has a size with its unit behind it: whatever it
// says, it describes nothing that stands below.
//
//   - : red 2,5 mm², a bit stiff
//     A1: red 16 AWG, somewhere behind the dash
//     B+  red 6 mm² to the starter
func TellsCavity(text string) bool {
	const longest = 3 // bytes of the name of a cavity (no source)
	at := strings.IndexAny(text, " \t")
	if at < 1 {
		return false
	}
	mark, rest := strings.TrimRight(text[:at], ":.)"), text[at:]
	if mark == "" || len(mark) > longest || !strings.ContainsAny(mark, "+-0123456789") {
		return false
	}
	low := strings.ToLower(rest)
	for _, unit := range []string{"mm²", "mm2", "qmm", "mmq", "awg"} {
		at := strings.Index(low, unit)
		front := strings.TrimRight(low[:max(at, 0)], " ")
		if n := len(front); n > 0 && front[n-1] >= '0' && front[n-1] <= '9' {
			return true
		}
	}
	return false
}
