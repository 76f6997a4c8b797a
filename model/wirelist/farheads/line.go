package farheads

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/value"
)

// line is one line and what it says.
type line struct {
	plug, cavity               string // of the plug that all wires start at
	pin                        string // of the part
	signal, colour, size, note string
	turned                     bool // the cavity of the plug stands first
	free                       bool // nothing goes to the pin
	elsewhere                  bool // the wire ends at what stands in the place of the plug, "chassis"
}

// lineOf parts a line; plugs are the plugs that a text names.
func lineOf(text string, plugs map[string]bool) (l line, ok bool) {
	first, rest, ok := cutFirst(text)
	if !ok {
		return l, false
	}
	pin, isPin := pinOf(first)
	if isPin && name.OnlyState(rest) {
		return line{pin: pin, signal: rest, free: true}, true
	}
	second, rest := cutSecond(rest)
	if l.plug, l.cavity, ok = endOf(second, plugs); ok && isPin {
		l.pin = pin
		return l, l.values(rest)
	}
	if l.plug, l.cavity, ok = endOf(first, plugs); !ok {
		l.values(rest)
		l.pin, l.plug, l.elsewhere = pin, second, true
		return l, isPin && l.signal != "" && (l.colour != "" || l.size != "") && point.IsShortName(second) && !isValue(second)
	}
	if l.pin, ok = pinOf(second); !ok || l.pin == second && !isShortPin(second) {
		return l, false
	}
	l.turned = true
	return l, l.values(rest)
}

// cutFirst parts what stands before the first sign in a line off it.
func cutFirst(text string) (first, rest string, ok bool) {
	const most = 12 // bytes: "terminal 87a" (no source)
	at, long := len(text), 0
	for _, sign := range []string{" - ", " – ", " — ", ": ", " = ", " <- ", " ← ", " <-- ", " from ", " von ", " <= "} {
		if k := strings.Index(text, sign); k > 0 && k < at {
			at, long = k, len(sign)
		}
	}
	if long == 0 || at > most {
		return "", "", false
	}
	return strings.TrimSpace(text[:at]), strings.TrimSpace(text[at+long:]), true
}

// cutSecond parts the second end off what follows it.
func cutSecond(text string) (second, rest string) {
	at, long := len(text), 0
	for _, sign := range []string{", ", "; ", " - ", " – ", " — ", ": ", " | "} {
		if k := strings.Index(text, sign); k > 0 && k < at {
			at, long = k, len(sign)
		}
	}
	return strings.TrimSpace(text[:at]), strings.TrimSpace(text[at+long:])
}

// pinOf is the pin of a part, without the word for one.
func pinOf(text string) (pin string, ok bool) {
	pin = name.WithoutPinWord(text)
	return pin, pin == "+" || pin == "-" || name.IsCavity(pin)
}

// isShortPin reports whether a text is a pin that nobody takes for the cavity of a plug: a number or one sign.
func isShortPin(pin string) bool { return len(pin) == 1 || strings.Trim(pin, "0123456789") == "" }

// endOf parts a cavity of one of the plugs, "M12", "M-12", or of any plug that has a number of its own and a sign behind it, "X3-12".
func endOf(text string, plugs map[string]bool) (plug, cavity string, ok bool) {
	if plug, cavity, ok = name.SplitEnd(text); ok && name.IsCavity(cavity) && (plugs[plug] || name.IsDesignator(plug) && isPlugName(plug)) {
		return plug, cavity, true
	}
	number := strings.TrimLeft(text, "ABCDEFGHIJKLMNOPQRSTUVWXYZ")
	plug = strings.TrimSpace(text[:len(text)-len(number)])
	if number = strings.TrimSpace(number); plugs[plug] && number != "" && strings.Trim(number, "0123456789") == "" && len(number) < 4 {
		return plug, number, true
	}
	return "", "", false
}

// values takes in what a line says behind its two ends: by its signs, a colour and a size by what they are, the name first of what is left.
// false where no sign parts it and it says more than a name.
func (l *line) values(rest string) bool {
	for _, sign := range []string{" | ", "; ", ", ", " - ", " – "} {
		if strings.Contains(rest, sign) {
			for piece := range strings.SplitSeq(rest, sign) {
				l.take(strings.TrimSpace(piece))
			}
			return true
		}
	}
	if rest != "" {
		l.take(rest)
	}
	return true
}

// take takes in one piece.
func (l *line) take(piece string) {
	colour, size := point.WireValues(piece)
	if colour == "" && isSize(piece) {
		size = piece
	}
	if colour == "" && size == "" && piece == strings.ToUpper(piece) && strings.Contains(piece, "/") && point.IsColourOrLetters(piece) {
		colour = piece
	}
	switch {
	case piece == "":
	case (colour != "" || size != "") && (colour == "" || l.colour == "") && (size == "" || l.size == ""):
		l.colour += colour
		l.size += size
	case l.signal == "":
		l.signal = piece
	case l.note == "":
		l.note = piece
	default:
		l.note += ", " + piece
	}
}

// isValue reports whether a text is a colour or a size of wire, or begins with one.
func isValue(text string) bool {
	colour, size := point.WireValues(text)
	return colour != "" || size != "" || isSize(text) || point.IsColourOrLetters(text)
}

// isSize reports whether a text is a size of wire with its unit.
func isSize(text string) bool {
	g, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown)
	return ok && g.Size != "" && !g.IsCable() && strings.Trim(text, "0123456789.,") != "" && strings.ContainsAny(text, "0123456789")
}
