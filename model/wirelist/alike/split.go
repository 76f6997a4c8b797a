package alike

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// toWords are the words that may stand in the place of an arrow.
var toWords = []string{" goes to ", " runs to ", " connects to ", " leads to ", " geht an ", " geht nach ", " va a ", " va à ",
	" gaat naar ", " to ", " nach ", " vers ", " verso ", " hacia ", " naar ", " till ", " til "}

// halves parts each text where the wire runs from the one side to the other: at its arrow, or, where all have the same word in its
// place, at that; sure says that they have arrows. far is "" where a text has neither; ok is false where less than three of four
// texts are parted.
func halves(texts []string) (near, far []string, sure, ok bool) {
	near, far = make([]string, len(texts)), make([]string, len(texts))
	parted := 0
	for i, t := range texts {
		if a, b, cut := arrow.Cut(t); cut && b != "" {
			near[i], far[i] = trimMark(a), b
			parted++
		} else {
			near[i] = t
		}
	}
	if parted > 0 {
		return near, far, true, 4*parted >= 3*len(texts)
	}
	for _, word := range toWords {
		parted = 0
		for i, t := range texts {
			near[i], far[i] = t, ""
			if a, b, cut := strings.Cut(t, word); cut && !strings.Contains(b, word) {
				near[i], far[i] = trimMark(a), strings.TrimSpace(b)
				parted++
			}
		}
		if 4*parted >= 3*len(texts) {
			return withoutDash(near), far, false, true
		}
	}
	return texts, make([]string, len(texts)), false, false
}

// withoutDash takes a dash off the end of texts that all have one there: it stands before the word, "pump feed - to Pump". A single one
// is the pole of a name.
func withoutDash(texts []string) []string {
	bare := make([]string, len(texts))
	for i, t := range texts {
		front, ok := strings.CutSuffix(t, " -")
		if !ok {
			return texts
		}
		bare[i] = strings.TrimSpace(front)
	}
	return bare
}

// trimMark takes a mark off the end of a text.
func trimMark(text string) string { return strings.TrimRight(text, " ,;|–—:") }

// lead parts the cavity off the front of a line: "1 - red", "1: red", "1. red", "pin 1, red", "A1 | red", "3 red". sign is what
// stands between, without blanks.
func lead(text string) (pin, sign, rest string, ok bool) {
	for _, w := range []string{"pin", "way", "cavity", "cav", "terminal", "pos"} {
		if len(text) > len(w)+1 && strings.EqualFold(text[:len(w)], w) && (text[len(w)] == ' ' || text[len(w)] == '#') {
			text = strings.TrimLeft(text[len(w):], " #.")
			break
		}
	}
	text = point.WithoutPinWord(text)
	end := strings.IndexAny(text, " :=.),;|\t")
	if end <= 0 {
		return "", "", "", false
	}
	pin, rest = text[:end], text[end:]
	if !name.IsCavity(pin) {
		return "", "", "", false
	}
	behind := strings.TrimLeft(rest, " \t")
	for _, s := range []string{":", ".", ")", "=", "|", "–", "—", "-", ",", ";"} {
		if after, cut := strings.CutPrefix(behind, s); cut && (after == "" || strings.ContainsAny(after[:1], " \t")) {
			sign, behind = s, after
			break
		}
	}
	if next, _, _ := strings.Cut(behind, " "); name.JoinsDevice(table.Fold(next)) { // "pin 1 of the radio"
		return "", "", "", false
	}
	if sign == "" && (behind == rest || !strings.ContainsAny(pin, "0123456789")) { // "A lamp is next to it"
		return "", "", "", false
	}
	return pin, sign, strings.TrimSpace(behind), true
}

// saysPin reports whether a piece is the cavity of the device before it: "pin 4", "terminal 3", "31".
func saysPin(text string) bool {
	w := strings.Fields(text)
	if len(w) == 2 {
		return name.IsPinWord(table.Fold(w[0])) && len(w[1]) <= 4
	}
	return len(w) == 1 && (name.IsCavity(text) || text == "+" || text == "-")
}

// isShort reports whether a text can be the name of a wire or of its end.
func isShort(text string) bool { return point.IsShortName(strings.TrimSuffix(text, ".")) }
