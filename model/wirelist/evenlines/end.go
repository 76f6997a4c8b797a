package evenlines

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// style is one way to write an end: a device and its cavity.
type style int

const (
	colon   style = iota // WCU:A1
	stroke               // WCU/A1
	bracket              // WCU (A1)
	spoken               // WCU pin A1
	dash                 // WCU-A1
	whole                // WCU, its cavity not said
	styles
)

// end parts an end that is written in a style.
func (s style) end(text string) (device, pin string, ok bool) {
	text = strings.Trim(text, " *`")
	switch s {
	case colon:
		device, pin, ok = cutLast(text, ":")
	case stroke:
		device, pin, ok = cutLast(text, "/")
	case dash:
		device, pin, ok = cutLast(text, "-")
	case bracket:
		bare, closed := strings.CutSuffix(text, ")")
		device, pin, ok = cutLast(bare, " (")
		ok = ok && closed
	case spoken:
		w := strings.Fields(text)
		if n := len(w); n > 2 && name.IsPinWord(table.Fold(w[n-2])) {
			device, pin, ok = strings.Join(w[:n-2], " "), w[n-1], true
		}
	case whole:
		return text, "", isDevice(text) && !strings.Contains(text, "/")
	}
	return device, pin, ok && isDevice(device) && isPin(pin)
}

// cutLast parts a text at the last of a sign in it.
func cutLast(text, sign string) (front, back string, ok bool) {
	at := strings.LastIndex(text, sign)
	if at <= 0 {
		return "", "", false
	}
	return strings.TrimSpace(text[:at]), strings.TrimSpace(text[at+len(sign):]), true
}

// isPin reports whether a text is the name of one cavity.
func isPin(text string) bool { return name.IsCavity(text) || text == "+" || text == "-" }

// isDevice reports whether a text could be the name of a device: short, with a letter, and without what parts the pieces of a line.
func isDevice(text string) bool {
	const mostWords, longest = 5, 40 // (no source)
	letter := strings.ContainsFunc(text, func(r rune) bool { return r > 127 || r|0x20 >= 'a' && r|0x20 <= 'z' })
	if first, _, ok := strings.Cut(text, " "); ok && strings.ContainsAny(first[len(first)-1:], ".):") && len(first) < 4 {
		return false // "1. WCU", "A) WCU" number the lines
	}
	return letter && len(text) <= longest && len(strings.Fields(text)) <= mostWords && !strings.ContainsAny(text, ",:;=<>|→⇒()\"?!*[]{}#")
}
