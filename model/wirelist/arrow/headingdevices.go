package arrow

import (
	"strings"

	"contralay/model/wirelist/name"
)

// HeadingDevices are the two devices that the heading of a table names, with an arrow, a word or a dash between; "" where it names none.
func HeadingDevices(text string) (near, far string) {
	if near, far = TwoDevices(text); near != "" {
		return near, far
	}
	const most = 3 // words of a device (no source)
	for _, dash := range []string{" – ", " — ", " - ", " / ", " <> "} {
		a, b, ok := strings.Cut(strings.TrimRight(text, ":"), dash)
		a, b = strings.TrimSpace(a), strings.TrimSpace(b)
		if ok && !strings.Contains(b, dash) && len(strings.Fields(a)) <= most && len(strings.Fields(b)) <= most && a != "" && b != "" &&
			!name.IsGeneric(a) && !name.IsGeneric(b) {
			return a, b
		}
	}
	return "", ""
}

// DevicesOfTitle are the texts of a title that can each name a device: both of those that an arrow or a word for where wires go stands
// between, else the whole of it.
//
//	TELEM1 to power module    TELEM1, power module
//	Left pump                 Left pump
func DevicesOfTitle(title string) []string {
	if near, far := TwoDevices(title); near != "" && !strings.Contains(title, " and ") {
		return []string{near, far}
	}
	return []string{title}
}
