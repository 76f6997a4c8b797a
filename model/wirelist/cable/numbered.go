package cable

import (
	"slices"
	"strings"

	"contralay/model/wirelist/commas"
	"contralay/model/wirelist/value"
)

// OfNote is what a note says of the cable of its wire.
type OfNote struct {
	Called, Number string      // "cable 1", "1"; "" where the note says no such thing
	Made           value.Gauge // shielded, twisted, of how many conductors
	Says, Rest     string      // the words of it, and what the note says besides
}

// Numbered reads a note that says how the cable of its wire is made and which of the list's cables it is: "shielded triple, cable 1",
// "screened cable W7, to the mast".
func Numbered(note string) (c OfNote) {
	if !mayNumber(note) {
		return OfNote{}
	}
	for _, piece := range commas.Parts(note, ",;()") {
		piece = strings.TrimSpace(piece)
		front, of, n := cutNumbered(piece)
		how := piece
		if n != "" && c.Called == "" {
			c.Called, c.Number, how = of, n, front
		}
		g, ok := value.ParseGauge(how, value.BareAWG, value.MarkUnknown)
		if how != "" && !(ok && g.IsCable() && g.Size == "" && g.Spec == "") {
			c.Rest = value.JoinNonEmpty(", ", c.Rest, how)
			how = ""
		}
		if n != "" && isPairCalled(of) {
			c.Made.Conductors = 2
		}
		if how != "" {
			c.Made.Shielded, c.Made.Twisted = c.Made.Shielded || g.Shielded, c.Made.Twisted || g.Twisted
			c.Made.Conductors = max(c.Made.Conductors, g.Conductors)
		}
		c.Says = value.JoinNonEmpty(", ", c.Says, how)
	}
	if !c.Made.IsCable() || c.Called == "" {
		return OfNote{}
	}
	c.Says += ", " + c.Called
	return c
}

// mayNumber reports whether a note has a number, or a letter, behind what may call a cable.
func mayNumber(note string) bool {
	for w := range strings.FieldsFuncSeq(note, func(r rune) bool { return r == ' ' || r == ',' || r == ';' || r == '(' }) {
		if w = bare(w); isCableWord(w) || pairWord(w) {
			return true
		}
	}
	return false
}

// isCableWord reports whether a folded word calls a cable.
func isCableWord(w string) bool {
	switch w {
	case "cable", "kabel", "cavo", "przewod":
		return true
	}
	return false
}

// cutNumbered parts "screened cable 2" in what stands before the cable, the cable and its number.
func cutNumbered(piece string) (front, called, number string) {
	words := strings.Fields(piece)
	at := slices.IndexFunc(words, func(w string) bool { return isCableWord(bare(w)) })
	last := len(words) - 1
	if last > 0 && isPairCalled(words[last]) && pairWord(words[last-1]) { // "shielded pair SP1"
		return strings.Join(words[:last-1], " "), words[last], words[last]
	}
	if at < 0 || last == at || last > at+2 || last == at+2 && !isFiller(bare(words[at+1])) { // "cable no. 2"
		return "", "", ""
	}
	if id := bareID(words[last]); isNumber(id) || IsMark(id) || len(id) == 1 && value.IsLetter(id[0]) {
		return strings.Join(words[:at], " "), words[at] + " " + id, id
	}
	return "", "", ""
}

// isNumber reports whether a text is nothing but digits.
func isNumber(s string) bool { return s != "" && strings.Trim(s, "0123456789") == "" }

// pairWord reports whether a word is "pair" in one of several languages.
func pairWord(w string) bool {
	switch bare(w) {
	case "pair", "paar", "paire", "par", "coppia", "para":
		return true
	}
	return false
}

// isPairCalled reports whether a word is what a pair is called, two letters or more with a P among them and a number, "SP1", "TSP12":
// one letter and a number is a wire, or a connector.
func isPairCalled(w string) bool {
	letters := strings.TrimRight(w, "0123456789")
	return len(letters) > 1 && len(letters) < 5 && len(letters) < len(w) && len(w)-len(letters) < 3 &&
		letters == strings.ToUpper(letters) && strings.Contains(letters, "P") && strings.Trim(letters, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == ""
}
