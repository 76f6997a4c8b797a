package pieces

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// pinned is the end at the front of some words that names its cavity beyond doubt, "inj 1 pin 2", "X1:3", "pin 3 of the radio", and the
// words behind it; "" where none stands there.
func pinned(w []string) (end string, rest []string) {
	const most = 4 // words of a device (no source)
	for i := 1; i < len(w)-1 && i <= most; i++ {
		if name.IsPinWord(table.Fold(w[i])) && isCavity(w[i+1]) {
			return strings.Join(w[:i+2], " "), w[i+2:]
		}
	}
	if connector, pin, ok := strings.Cut(w[0], ":"); ok && name.IsDesignator(connector) && isCavity(pin) {
		return w[0], w[1:]
	}
	if whole := strings.Join(w, " "); name.IsPinWord(table.Fold(w[0])) {
		if _, pin, ok := name.SplitEnd(whole); ok && isCavity(pin) {
			return whole, nil
		}
	}
	return "", nil
}

// isCavity reports whether a word can be a cavity, or a pole.
func isCavity(w string) bool { return name.IsCavity(w) || w == "+" || w == "-" }
