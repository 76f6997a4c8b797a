package sentence

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// A making guide tells each wire in a numbered sentence. What one sentence leaves unsaid, the device at either end, the sentence
// before it says.
//
//  1. Connect the black wire from the gauge to the GND pin on the hub.
//  2. Connect the red wire to the 5V pin.

// Talk is what the sentences so far were about.
type Talk struct {
	near, far string
	times     int // sentences in a row with one far device
}

// Wire is a wire that a sentence tells.
type Wire struct {
	Near, NearPad, Far, FarPad, Colour, Note string
}

// Wires reads the wires of one numbered row, or point, and takes on what it is about.
func Wires(r table.Row, t *Talk) (all []Wire) {
	if len(r.Cells) != 1 || r.Level > 0 {
		return nil
	}
	text := r.Cells[0]
	if pin, rest, ok := strings.Cut(text, " "); ok && strings.Trim(pin, "0123456789") != pin && strings.Trim(pin, "0123456789.)") == "" {
		text = rest
	} else if !r.Point {
		return nil
	}
	if !strings.Contains(text, " ") || len(text) > 400 {
		return nil
	}
	for sentence := range strings.SplitSeq(strings.TrimRight(text, ". "), ". ") {
		if w, ok := tellsWire(sentence, t); ok {
			w.Note = r.Cells[0] // a person reads it again beside the ends
			all = append(all, w)
		} else if len(all) == 0 {
			t.about(sentence)
		}
	}
	return all
}

// Complete gives the far ends that say no device the one device that the others of a list are taken to, where there is one alone.
func Complete(all []Wire) {
	far := ""
	for _, w := range all {
		if _, supply := supplyWord(w.Far); w.Far == "" || supply {
			continue
		}
		if far != "" && far != w.Far {
			return
		}
		far = w.Far
	}
	for i := range all {
		w := &all[i]
		switch word, supply := supplyWord(w.Far); {
		case far == "":
		case w.Far == "" && w.FarPad != "":
			w.Far = far
		case supply && w.FarPad == "":
			w.Far, w.FarPad = far, word
		}
	}
}

// about takes in the device whose wires a sentence is about, "Find the two wires coming out of your fan".
func (t *Talk) about(sentence string) {
	_, behind, ok := strings.Cut(table.Fold(sentence), "wires ")
	if !ok {
		return
	}
	for _, lead := range []string{"coming out of ", "coming from ", "from ", "of ", "on "} {
		if rest, ok := strings.CutPrefix(behind, lead); ok {
			if d := bareName(rest); len(strings.Fields(d)) < 4 {
				t.near = d
			}
			return
		}
	}
}

// tellsWire reads one sentence: a word for connecting, the near end, "to", the far end. A colour or a cavity must be said.
func tellsWire(sentence string, t *Talk) (w Wire, ok bool) {
	all := strings.Fields(sentence)
	for len(all) > 0 && slices.Contains([]string{"then", "now", "next", "finally", "and", "first", "lastly", "also"},
		table.Fold(strings.Trim(all[0], ","))) {
		all = all[1:]
	}
	if len(all) < 4 {
		return w, false
	}
	verb, ofWires := isConnecting(table.Fold(all[0]))
	if !verb {
		return w, false
	}
	text := strings.Join(all[1:], " ")
	for {
		open := strings.Index(text, " (")
		end := strings.IndexByte(text[max(open, 0):], ')')
		if open < 0 || end < 0 {
			break
		}
		if in := text[open+2 : open+end]; isColour(in) && w.Colour == "" {
			w.Colour = in
		}
		text = text[:open] + text[open+end+1:]
	}
	for _, mark := range []string{", ", "; ", " using ", " with ", " by ", " via ", " so that ", " as shown", " and then "} {
		text, _, _ = strings.Cut(text, mark)
	}
	front, back, found := strings.Cut(text, " to ")
	for _, word := range []string{" into ", " onto "} {
		if !found {
			front, back, found = strings.Cut(text, word)
		}
	}
	if !found || strings.Contains(back, " to ") {
		return w, false
	}
	near, colour, wire := wireOf(strings.TrimSuffix(strings.TrimSpace(front), " directly"))
	if colour != "" {
		w.Colour = colour
	}
	if !wire && ofWires {
		return w, false
	}
	var sure [2]bool
	if w.Near, w.NearPad, sure[0] = placeOf(near, t.near); !sure[0] && near != "" {
		return w, false
	}
	if near == "" {
		w.Near = t.near
	}
	far := t.far
	if _, supply := supplyWord(back); supply && t.times < 2 {
		far = "" // the ground of what?
	}
	if w.Far, w.FarPad, sure[1] = placeOf(back, far); !sure[1] || w.Colour == "" && w.NearPad == "" && w.FarPad == "" {
		return w, false
	}
	if w.Far == "" && w.FarPad == "" {
		return w, false
	}
	t.near = w.Near
	if _, supply := supplyWord(w.Far); supply {
		return w, true
	}
	if t.times++; t.far != w.Far {
		t.times = 1
	}
	t.far = w.Far
	return w, true
}

// isConnecting reports whether a word is for making a connection; ofWires is whether it is one of other things, too, and a wire
// must be said.
func isConnecting(w string) (is, ofWires bool) {
	ofWires = slices.Contains([]string{"attach", "run", "plug", "join", "link", "clip", "route", "take", "insert"}, w)
	return ofWires || slices.Contains([]string{"connect", "wire", "solder", "hook", "jumper"}, w), ofWires
}

// supplyWord reports whether a text is one word for a ground or a supply, and nothing says of which device.
func supplyWord(text string) (word string, is bool) {
	switch word = bareName(text); table.Fold(word) {
	case "ground", "gnd", "earth", "power":
		return word, true
	}
	return "", false
}

// wireOf parts the colour off the near end of a sentence, "the black wire from the gauge"; near is the place that is left, wire whether
// a wire is said.
func wireOf(text string) (near, colour string, wire bool) {
	all := strings.Fields(bareName(text))
	for i, w := range all {
		front := strings.Join(all[:i], " ")
		if i > 3 || !slices.Contains([]string{"wire", "lead", "cable", "one", "jumper", "strand", "side", "end", "leg"}, table.Fold(w)) ||
			table.Fold(w) == "one" && !isColour(front) {
			continue
		}
		rest := strings.Join(all[i+1:], " ")
		for _, lead := range []string{"coming out of ", "coming from ", "going from ", "from ", "of ", "on "} {
			if d, ok := strings.CutPrefix(rest, lead); ok {
				rest = d
				break
			}
		}
		switch {
		case isColour(front):
			return rest, front, true
		case slices.Contains([]string{"other", "second", "remaining", "one", "first", "free", ""}, table.Fold(front)):
			return rest, "", true
		}
		return text, "", false
	}
	return text, "", false
}

// placeOf reads an end of a wire in words, "the GND pin on the hub", "pin A3", "hub pin 4", "ground"; of is the device where it
// says none. ok is false where it is no such text.
func placeOf(text, of string) (device, pad string, ok bool) {
	text = bareName(text)
	folded := table.Fold(text)
	if text == "" || strings.HasPrefix(folded, "each ") || strings.HasPrefix(folded, "all ") || strings.HasPrefix(folded, "every ") {
		return "", "", false
	}
	if strings.HasPrefix(folded, "one of ") || strings.HasPrefix(folded, "either ") || strings.HasPrefix(folded, "any of ") {
		for _, word := range []string{" from ", " on ", " of "} {
			if i := strings.LastIndex(text, word); i > 0 {
				device = bareName(text[i+len(word):])
				return device, "", isDevicePhrase(device)
			}
		}
		return "", "", false
	}
	for _, word := range []string{" on ", " of ", " at ", " in ", " from "} {
		if front, back, cut := strings.Cut(text, word); cut {
			device, pad = bareName(back), padPhrase(front)
			said := pad != bareName(front) || isPadWord(pad)
			return device, pad, isDevicePhrase(device) && pad != "" && said && len(strings.Fields(pad)) < 3
		}
	}
	if word, is := supplyWord(text); is && of == "" {
		return word, "", true
	}
	all := strings.Fields(text)
	if p := padPhrase(text); p != text {
		if n := strings.Fields(p); len(n) > 1 { // "hub GND pin", "hub pin 4"
			return strings.TrimSuffix(strings.Join(n[:len(n)-1], " "), "'s"), n[len(n)-1], isDevicePhrase(strings.Join(n[:len(n)-1], " "))
		}
		return of, p, p != ""
	}
	last := all[len(all)-1]
	switch {
	case len(all) == 1 && isPadWord(last):
		return of, last, true
	case len(all) > 1 && isPadWord(last):
		device = strings.TrimSuffix(strings.Join(all[:len(all)-1], " "), "'s")
		return device, last, isDevicePhrase(device)
	}
	return text, "", isDevicePhrase(text)
}

// padPhrase takes the words for a cavity off its name, "the GND pin", "pin A3", "positive terminal".
func padPhrase(text string) string {
	var left []string
	for _, w := range strings.Fields(bareName(text)) {
		switch table.Fold(w) {
		case "pin", "pad", "terminal", "hole", "socket", "port", "leg", "header", "screw":
		default:
			left = append(left, w)
		}
	}
	return strings.Join(left, " ")
}

// isPadWord reports whether one word is the name of a pad: it has a digit, is in capitals, or is a word for a supply.
func isPadWord(w string) bool {
	switch table.Fold(w) {
	case "ground", "gnd", "power", "vcc", "vin", "positive", "negative", "earth":
		return true
	}
	return len(w) <= 8 && (strings.ContainsAny(w, "0123456789") || len(w) > 1 && len(w) < 6 && strings.ToUpper(w) == w) &&
		strings.Trim(w, "0123456789") != ""
}

// isDevicePhrase reports whether some words can be the name of a device: few, and none of a sentence.
func isDevicePhrase(text string) bool {
	all := strings.Fields(text)
	return len(all) > 0 && len(all) < 5 && name.StateOf(text) == name.Used && !slices.ContainsFunc(all, func(w string) bool {
		return slices.Contains([]string{"is", "are", "it", "you", "that", "which", "and", "or", "will", "make", "turn", "see", "each",
			"them", "this"}, table.Fold(w))
	})
}

// bareName takes articles off the head of a text.
func bareName(text string) string {
	all := strings.Fields(text)
	for len(all) > 1 && slices.Contains([]string{"the", "a", "an", "your", "its", "this", "that", "directly"}, table.Fold(all[0])) {
		all = all[1:]
	}
	return strings.TrimRight(strings.Join(all, " "), ".,;:")
}

// isColour reports whether a text is the name of a colour and nothing else.
func isColour(text string) bool {
	_, ok := value.ParseColour(text, "")
	return ok && strings.Trim(text, "0123456789") != ""
}
