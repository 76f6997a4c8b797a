package runline

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// AreNumbered reports whether some lines tell both ends of a wire each behind a number that counts the lines: what stands before the far
// end is a device and its cavity in most of them, and some device comes again. Behind the cavity of a plug stands a name.
//
//  1. Relay 87 to fan +, red 12 AWG
//  2. Relay 85 to desk A7, white 20 AWG
func AreNumbered(lines []string) bool {
	devices := map[string]int{}
	ends := 0
	for _, line := range lines {
		number, rest, ok := strings.Cut(line, " ")
		if bare := strings.TrimRight(number, ".):"); !ok || bare == number || strings.Trim(bare, "0123456789") != "" {
			return false
		}
		from, to, _ := Part(strings.TrimSpace(rest))
		if from == "" || to == "" {
			return false
		}
		at := strings.LastIndexByte(from, ' ')
		if last := from[at+1:]; IsPlainEnd(from) || at > 0 && (last == "+" || last == "-" || name.IsCavity(last)) {
			ends++
			devices[table.Fold(from[:max(at, 0)])]++
		}
	}
	again := false
	for _, n := range devices {
		again = again || n > 1
	}
	return 3*ends >= 2*len(lines) && again && len(lines) > 1
}
