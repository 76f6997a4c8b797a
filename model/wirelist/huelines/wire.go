package huelines

import (
	"slices"
	"strings"

	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// wire is what a text says of one wire of a device.
type wire struct {
	colour, size, signal, to, note string
	from, pin                      string // the end that it starts at, where it is not the device; its cavity
	times                          int    // how many such wires there are: "yellow x3"
	signed                         bool   // a sign or a word parts the colour from the rest
}

// wireOf parts a text that begins with the colour of a wire; ok is false where it says nothing but that.
func wireOf(text string) (w wire, ok bool) {
	text = strings.TrimSpace(strings.TrimLeft(strings.TrimSpace(text), "-*•·"))
	text = w.cutNumber(text)
	if text == "" || !value.IsLetter(text[0]) {
		return w, false // a number in front is that of a cavity, or of a wire
	}
	if thick, rest, found := strings.Cut(text, " "); found && isThick(thick) {
		w.note, text = table.Fold(thick), rest
	}
	front, rest, signed := cutSign(text)
	if signed {
		front = w.cutTimes(front)
		if w.colour, w.size = point.WireValues(front); w.colour != "" {
			w.signed = true
			return w, w.take(rest)
		}
	}
	words := strings.Fields(text)
	for n := min(len(words)-1, mostColour); n > 0; n-- {
		if w.colour, w.size = point.WireValues(strings.Join(words[:n], " ")); w.colour == "" {
			continue
		}
		rest = strings.Join(words[n:], " ")
		if in, found := strings.CutPrefix(rest, "("); found && strings.HasSuffix(in, ")") && !strings.ContainsAny(in[:len(in)-1], "()") {
			rest, w.signed = in[:len(in)-1], true
		} else if in, found := cutWord(rest, "wire", "lead", "cable", "fil", "draht", "ader", "kabel", "hilo", "filo"); found {
			rest = in
		}
		if word, _ := cutWay(rest); word {
			w.signed = true
		}
		return w, w.take(rest)
	}
	return w, false
}

// mostColour is how many words a colour has: "light green with red stripe" (no source).
const mostColour = 5

// isThick reports whether a word says of a wire how thick it is, without a size; such a word is kept.
func isThick(w string) bool {
	switch table.Fold(w) {
	case "thick", "thin", "heavy", "fat", "dick", "dunn", "dickes", "gros", "fin", "grueso", "fino", "grosso", "sottile", "dik", "dun":
		return true
	}
	return false
}

// cutSign parts a text at the first sign that can stand behind a colour.
func cutSign(text string) (front, rest string, ok bool) {
	at, long := len(text), 0
	for _, sign := range []string{": ", " : ", " - ", " – ", " — ", " = ", " -> ", " --> ", " → ", " => ", " ← ", " <- "} {
		if k := strings.Index(text, sign); k > 0 && k < at {
			at, long = k, len(sign)
			if strings.ContainsAny(sign, "→←<>") {
				long = 0 // the arrow belongs to the end behind it
			}
		}
	}
	if at == len(text) {
		return "", "", false
	}
	return strings.TrimSpace(text[:at]), strings.TrimSpace(text[at+long:]), true
}

// cutTimes takes the count off a colour that several wires have, "yellow x3", "3 x yellow".
func (w *wire) cutTimes(front string) string {
	words := strings.Fields(front)
	if n := len(words); n > 1 {
		last := strings.Map(func(r rune) rune {
			if r == '×' {
				return 'x'
			}
			return r
		}, strings.ToLower(strings.Trim(words[n-1], "()")))
		count := strings.Trim(last, "x")
		if len(last) == 2 && len(count) == 1 && count[0] >= '2' && count[0] <= '6' {
			w.times = int(count[0] - '0')
			w.note = value.JoinNonEmpty("; ", w.note, words[n-1])
			return strings.Join(words[:n-1], " ")
		}
	}
	return front
}

// cutNumber takes the count off a line of several wires, "3 yellow wires – stator", "3x yellow – stator".
func (w *wire) cutNumber(text string) string {
	first, rest, _ := strings.Cut(text, " ")
	bare := strings.TrimRight(first, "x×")
	if len(bare) != 1 || bare[0] < '2' || bare[0] > '6' {
		return text
	}
	front, behind, ok := cutSign(rest)
	words := strings.Fields(front)
	if n := len(words); ok && n > 1 && isWiresWord(words[n-1]) {
		rest = strings.Join(words[:n-1], " ") + " – " + behind
	} else if bare == first {
		return text // the number of a pin
	}
	w.times, w.note = int(bare[0]-'0'), strings.TrimSpace(first+" wires")
	if bare != first {
		w.note = first
	}
	return rest
}

// isWiresWord reports whether a word is one for several wires.
func isWiresWord(w string) bool {
	switch table.Fold(w) {
	case "wires", "leads", "cables", "kabel", "adern", "drahte", "fils", "hilos", "fili", "draden":
		return true
	}
	return false
}

// take takes in what stands behind the colour: a name, and the end behind an arrow or behind a word that says the way.
func (w *wire) take(rest string) bool {
	for _, sign := range []string{"-->", "->", "=>", "→", "<--", "<-", "←"} {
		if front, far, found := strings.Cut(rest, sign); found {
			w.signal, w.to = strings.TrimSpace(front), strings.TrimSpace(far)
			return w.to != "" && point.IsShortName(w.to) && !strings.ContainsAny(w.to, "→←<>") && w.bareSignal()
		}
	}
	if found, far := cutWay(rest); found {
		w.to = far
		if at := strings.Index(far, " ("); at > 0 && strings.HasSuffix(far, ")") && len(far)-at > 6 {
			w.to, w.signal = far[:at], strings.TrimSuffix(far[at+2:], ")")
		}
		return point.IsShortName(w.to) && !strings.Contains(" "+far+" ", " to ")
	}
	if at := strings.LastIndex(rest, ", "); at > 0 {
		if found, far := cutWay(rest[at+2:]); found && point.IsShortName(far) {
			w.signal, w.to = rest[:at], far
			return true
		}
	}
	w.signal = rest
	return w.bareSignal() && rest != ""
}

// bareSignal reports whether the name is short enough for one, or there is none.
func (w *wire) bareSignal() bool { return w.signal == "" || point.IsShortName(w.signal) }

// cutWay takes the word off an end that says that a wire goes there or comes from there.
func cutWay(rest string) (ok bool, far string) {
	if in, found := cutWord(rest, "goes", "runs", "connects", "connected", "comes", "geht", "kommt", "va", "vient", "gaat", "komt",
		"gar"); found {
		rest = in
	}
	far, ok = cutWord(rest, "to", "from", "zu", "zum", "zur", "vom", "von", "nach", "an", "naar", "van", "vers", "till", "fran", "hacia",
		"verso")
	for _, the := range []string{"the", "den", "die", "das", "de", "het"} {
		if in, found := cutWord(far, the); found && ok && the != "de" {
			far = in
		}
	}
	return ok, far
}

// cutWord takes the first word off a text where it is one of some.
func cutWord(text string, words ...string) (rest string, ok bool) {
	first, rest, ok := strings.Cut(text, " ")
	if !ok || !slices.Contains(words, table.Fold(first)) {
		return text, false
	}
	return strings.TrimSpace(rest), true
}
