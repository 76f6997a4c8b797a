package runline

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
)

// GaugeBehind takes a gauge without unit that stands between a far end with its cavity and the colour for the size: "Fan:3 12 red" has no
// second cavity. rest are the colour, the size and more.
func GaugeBehind(to string, rest []string) string {
	at := strings.LastIndexByte(to, ' ')
	if at < 1 || len(rest) < 2 || rest[0] == "" || rest[1] != "" || !point.IsBareGauge(to[at+1:]) {
		return to
	}
	front := strings.TrimSpace(to[:at])
	if _, pin, ok := name.SplitEnd(front); !ok || pin == "" || strings.HasSuffix(front, ",") {
		return to
	}
	rest[1] = to[at+1:] + " AWG"
	return front
}
