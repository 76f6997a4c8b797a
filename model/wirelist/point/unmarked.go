package point

import (
	"strings"

	"contralay/model/wirelist/value"
)

// Unmarked parts a text that says the colour of a wire, its name and its size with no sign between them, "PK BEACON 12 ga", "red 14 AWG
// main feed": the colour stands first and the size has its unit. colour is "" where it is none such.
func Unmarked(text string) (colour, size, called string) {
	const most = 3 // words of a colour (no source)
	w := strings.Fields(text)
	for n := min(most, len(w)-1); n > 0 && colour == ""; n-- {
		if front := strings.Join(w[:n], " "); len(front) > 1 && IsColour(front) {
			colour, w = front, w[n:]
		}
	}
	if colour == "" {
		return "", "", ""
	}
	for n := min(2, len(w)-1); n > 0; n-- { // words of a size
		last := len(w) - n
		for _, at := range [][2][]string{{w[:n], w[n:]}, {w[last:], w[:last]}} {
			s := strings.Join(at[0], " ")
			g, ok := value.ParseGauge(s, value.BareAWG, value.MarkUnknown)
			if ok && g.Size != "" && !g.IsCable() && strings.Trim(s, "0123456789.,") != "" && IsShortName(strings.Join(at[1], " ")) {
				return colour, s, strings.Join(at[1], " ")
			}
		}
	}
	return "", "", ""
}
