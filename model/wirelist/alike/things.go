package alike

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/words"
)

// ToThings reports whether each of some lines has an arrow right behind its cavity, and behind that the thing that its wire is taken to:
// most are such by their words, and none is what a wire carries.
//
//	pin 1 -> pump motor (red, 14 AWG)
//	pin 2 -> level probe (green, 20 AWG)
//	pin 3 -> free
func ToThings(texts []string) bool {
	used, things := 0, 0
	for _, t := range texts {
		_, _, rest, ok := lead(t)
		if !ok {
			return false
		}
		from, to := arrow.In(rest)
		if to > 0 && from == 0 {
			rest = strings.TrimSpace(rest[to:])
		}
		if name.StateOf(rest) != name.Used || rest == "" {
			continue
		}
		if to == 0 || from > 0 {
			return false
		}
		if used++; isNet(rest) {
			return false
		}
		if all := pieces(rest, ", "); len(all) > 0 && words.IsThing(all[0].text) {
			things++
		}
	}
	return used > 1 && 3*things >= 2*used
}

// isNet reports whether what a text says before its values is what a wire carries.
func isNet(text string) bool {
	all := pieces(text, ", ")
	return len(all) == 0 || words.IsNet(all[0].text)
}
