package words

import (
	"strings"

	"contralay/model/wirelist/name"
)

// BeginsBlank reports whether a note says first that nothing is connected, and then more: "not wired, the drive is always on".
func BeginsBlank(note string) bool {
	first := note
	for _, sign := range []string{" - ", " – ", ",", ";", ":", ". ", " ("} {
		first, _, _ = strings.Cut(first, sign)
	}
	return first != note && name.StateOf(first) == name.Blank && strings.TrimSpace(first) != "-"
}

// BeginsOpen reports whether an end says first that nothing is connected, and then in words why: "nc, the old box has none". One that names
// a place behind it is an end, "NC, relay K4".
func BeginsOpen(end string) bool {
	return BeginsBlank(end) && strings.Count(end, " ") > 1 && !strings.ContainsAny(end, "0123456789")
}
