package runline

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
)

// ColonsForDashes writes a colon between device and cavity in both ends of a line with an arrow, where both have a dash between blanks
// there: "X1 – 1 -> Fuel pump – A, feed" is "X1:1 -> Fuel pump:A, feed". Any other text is given back as it is.
func ColonsForDashes(text string) string {
	at, end := arrow.In(text)
	if end == 0 {
		return text
	}
	from, to := strings.TrimSpace(text[:at]), strings.TrimSpace(text[end:])
	for _, dash := range []string{" – ", " — ", " - "} {
		near, cavity, ok := strings.Cut(from, dash)
		device, behind, both := strings.Cut(to, dash)
		if !ok || !both || !isCavityOrPole(cavity) || strings.ContainsAny(near+device, ":,;(|") ||
			name.IsCavity(near) && !name.IsDesignator(near) {
			continue
		}
		pin, rest := behind, ""
		if end := strings.IndexAny(behind, " ,;:"); end > 0 {
			pin, rest = behind[:end], behind[end:]
		}
		if isCavityOrPole(pin) {
			return near + ":" + cavity + " " + strings.TrimSpace(text[at:end]) + " " + strings.TrimSpace(device) + ":" + pin + rest
		}
	}
	return text
}

// isCavityOrPole reports whether a text is a cavity, or a pole of a device.
func isCavityOrPole(pin string) bool { return name.IsCavity(pin) || pin == "+" || pin == "-" }
