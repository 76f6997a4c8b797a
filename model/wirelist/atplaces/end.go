package atplaces

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// end is what a cell says of one end.
type end struct {
	pin, called, colour string
	told                bool   // the pin stands before its name
	led                 bool   // an arrow stands before it
	free                bool   // it says that nothing goes there
	says                string // in these words
}

// mostBare is how long a bare pin is, in bytes (no source).
const mostBare = 16

// endOf reads a cell.
func endOf(cell string) (e end) {
	text := strings.TrimSpace(cell)
	for _, arrow := range []string{"-->", "==>", "->", "=>", ">>", "→", "⇒", "➔", "➜", "►", "<->", "<-", "←", "↔"} {
		if rest, is := strings.CutPrefix(text, arrow); is {
			text, e.led = strings.TrimSpace(rest), true
			break
		}
		if rest, is := strings.CutSuffix(text, arrow); is {
			text, e.led = strings.TrimSpace(rest), true
			break
		}
	}
	pin, rest, told := cutPin(text)
	if !told && (value.IsNothing(text) || text == "" || name.StateOf(text) == name.Blank) {
		e.free, e.says = true, strings.Trim(text, "-–— ")
		return e
	}
	if told {
		e.told, e.pin = true, pin
		e.called, e.colour = calledOf(rest)
		return e
	}
	e.pin = name.WithoutPinWord(text)
	return e
}

// isBarePin reports whether a text without a name behind it can be a pin.
func isBarePin(text string) bool {
	return len(text) <= mostBare && strings.Count(text, " ") < 2 && !strings.ContainsAny(text, "()[]=,;:<>→")
}

// cutPin parts the pin before a sign off a cell, "1 - Supply", "A: Pulse", "3 = common", "4. Lamp".
func cutPin(text string) (pin, rest string, ok bool) {
	for _, sign := range []string{" - ", " – ", " — ", ": ", " = ", " : ", ". ", ") "} {
		if pin, rest, ok = strings.Cut(text, sign); ok && isShortPin(name.WithoutPinWord(strings.TrimSpace(pin))) {
			return name.WithoutPinWord(strings.TrimSpace(pin)), strings.TrimSpace(rest), true
		}
	}
	return "", "", false
}

// isShortPin reports whether a text is a number, one letter, or a letter and a number.
func isShortPin(text string) bool {
	const longest = 3 // bytes (no source)
	return text != "" && len(text) <= longest && name.IsCavity(text) && strings.Trim(text, "+-") != ""
}

// calledOf parts the name of a pin and its colour, "Supply (Brown)", "Supply, brown", "brown".
func calledOf(text string) (called, colour string) {
	if before, rest, ok := strings.Cut(text, "("); ok && strings.HasSuffix(rest, ")") {
		if in := strings.TrimSuffix(rest, ")"); isColour(in) {
			return strings.TrimSpace(before), strings.TrimSpace(in)
		}
	}
	for _, sign := range []string{", ", " - ", " – "} {
		if before, rest, ok := strings.Cut(text, sign); ok {
			if isColour(rest) && !isColour(before) {
				return strings.TrimSpace(before), strings.TrimSpace(rest)
			}
			if isColour(before) && !isColour(rest) {
				return strings.TrimSpace(rest), strings.TrimSpace(before)
			}
		}
	}
	if isColour(text) {
		return "", text
	}
	return text, ""
}

// isColour reports whether a text is a colour, as a word or in a short form.
func isColour(text string) bool {
	_, ok := value.ParseColour(strings.TrimSpace(text), "")
	return ok
}

// areOf reports whether bare cells are pins of a place: each once, but for a common one, none a thing of its own, and no designators where
// nothing says that the place has pins.
func areOf(p place, pins []string) bool {
	seen, again, parts, filled := map[string]bool{}, 0, 0, 0
	for _, pin := range pins {
		if filled++; seen[pin] {
			again++
		}
		if !isBarePin(pin) {
			return false
		}
		seen[pin] = true
		if words.IsThing(pin) && !words.IsNet(pin) && !isGround(pin) || wordsIn(pin) > 1 && !p.ofPins && !words.IsNet(pin) {
			return false
		}
		if _, _, full := name.SplitEnd(pin); full && !strings.Contains(pin, "/") && strings.Trim(pin, "+-") == pin {
			return false // the cell names a connector
		}
		if _, colour := value.ParseColour(pin, ""); colour && len(pin) > 2 {
			return false
		}
		if name.IsDesignator(pin) && strings.ContainsAny(pin, "0123456789") {
			parts++
		}
	}
	return 2*again < filled && (2*parts < filled || p.ofPins || p.isThing)
}

// wordsIn counts the words of a text that are written as words: "RX A" has none.
func wordsIn(text string) (n int) {
	for w := range strings.FieldsSeq(text) {
		if len(w) > 1 && strings.ToUpper(w) != w {
			n++
		}
	}
	return n
}

// isGround reports whether a text is a word for ground, which is a thing and a pin.
func isGround(pin string) bool {
	switch strings.ToLower(pin) {
	case "ground", "gnd", "earth", "masse", "massa", "jord", "masa", "frame", "chassis", "led":
		return true
	}
	return false
}
