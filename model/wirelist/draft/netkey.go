package draft

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// NetKey is the name of a net as names are held against each other: nets of one key are one.
func NetKey(signal string) string {
	return strings.Join(append(append(name.Words(table.Fold(signal)), name.PlusMinus(signal)...), inverse(signal)...), " ")
}

// SameSigns reports whether two names of nets have the same sign of a pole or of the inverse, or neither has one.
func SameSigns(a, b string) bool {
	return slices.Equal(name.PlusMinus(a), name.PlusMinus(b)) && slices.Equal(inverse(a), inverse(b))
}

// inverse keeps the sign that tells a net from its inverse, which words drop: "A/" beside "A", "/RESET" beside "RESET". Common
// practice, no source.
func inverse(signal string) []string {
	s := strings.TrimSpace(signal)
	if len(s) > 1 && (strings.IndexByte(`/\#~'!`, s[len(s)-1]) >= 0 || strings.IndexByte(`/\~!`, s[0]) >= 0) {
		return []string{"/"}
	}
	return nil
}
