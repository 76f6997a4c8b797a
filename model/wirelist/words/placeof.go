package words

import (
	"strings"

	"contralay/model/wirelist/name"
)

// IsPlaceOf reports whether a heading of two words is the name of one thing and a word for a place on it, which alone would be something
// else: "TS3 tag" beside "PL3 pin". last is the second word, folded.
func IsPlaceOf(head, last string) bool {
	if last == "" || !IsPlace(last) {
		return false
	}
	of, _, _ := strings.Cut(head, " ")
	return strings.Count(head, " ") == 1 && strings.ContainsAny(of, "0123456789") && name.IsDesignator(of)
}
