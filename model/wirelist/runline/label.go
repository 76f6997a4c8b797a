package runline

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/value"
)

// labelBefore parts the name of a wire, with a colon, an equals sign or a dash behind it, off its near end: "Bilge pump:
// Panel 3". A colon with a blank behind it parts them; "Panel: 3" is an end, a device and its cavity. label is "" where there is none.
func labelBefore(from string) (label, end string) {
	front, back, ok := strings.Cut(from, ": ")
	for _, mark := range []string{" = ", " - ", " – ", " — "} {
		if !ok {
			front, back, ok = strings.Cut(from, mark)
			ok = ok && (mark == " = " || endsInCavity(back)) // "Relay 1 - 87" is an end
		}
	}
	front, back = strings.TrimSpace(front), strings.TrimSpace(back)
	isCalled := ok && name.IsDesignator(back) && isWords(front)
	if !ok || front == "" || back == "" || name.IsCavity(back) && !value.IsDigit(front[0]) && !isCalled || strings.Contains(front, ":") ||
		!point.IsShortName(front) {
		return "", from
	}
	if !strings.ContainsAny(back, " :-./") && len(back) < 5 && back == strings.ToUpper(back) && !value.IsDigit(front[0]) && !isCalled {
		return "", from // "Box: GND"
	}
	return front, back
}

// remarkBehindValues parts a remark in brackets off a far end and its values, "Lamp 2, red, 18 AWG (new, see photo)"; remark is ""
// where none stands behind values.
func remarkBehindValues(to string) (front, remark string) {
	open := strings.LastIndexByte(to, '(')
	if open < 1 || !strings.HasSuffix(to, ")") {
		return remarkAmongValues(to)
	}
	if _, values := point.ValuesBehind(to); values != nil {
		return to, ""
	}
	front = strings.TrimSpace(to[:open])
	if _, values := point.ValuesBehind(front); values == nil {
		return remarkAmongValues(to)
	}
	return front, strings.TrimSpace(to[open+1 : len(to)-1])
}

// endsInCavity reports whether a text is a device of some words and, behind a blank, its cavity.
func endsInCavity(text string) bool {
	w := strings.Fields(text)
	return len(w) > 1 && name.IsCavity(w[len(w)-1]) && !name.IsCavity(w[0])
}

// isWords reports whether a text is two words or more in small letters of which the last is for no thing: "key feed" names a wire, and
// "fuse box" where it starts.
func isWords(text string) bool {
	w := strings.Fields(text)
	if len(w) < 2 || strings.ToLower(text) != text {
		return false
	}
	last := w[len(w)-1]
	return !name.IsDeviceWord(last) && !name.IsUnit(last) && !name.IsConnectorWord(last)
}
