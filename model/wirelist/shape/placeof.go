package shape

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/words"
)

// isPlaceOf reports whether a heading of two words is the name of one thing and a word for a place on it, which alone would be
// something else: "TS3 tag" beside "PL3 pin".
func isPlaceOf(head, last string) bool {
	if last == "" || !words.IsPlace(last) {
		return false
	}
	of, _, _ := strings.Cut(head, " ")
	return strings.Count(head, " ") == 1 && strings.ContainsAny(of, "0123456789") && name.IsDesignator(of)
}
