package pieces

import (
	"strings"
	"unicode"

	"contralay/model/wirelist/point"
	"contralay/model/wirelist/value"
)

// mostWords is how many words a colour or a size has (no source).
const mostWords = 3

// takeValues takes the colour and the size off the front and the back of some words, where the line has none yet.
func (l *line) takeValues(r reader, w []string) []string {
	for again := true; again && len(w) > 0; {
		again = false
		for n := min(mostWords, len(w)) - 1; n > 0 && l.bare == "" && IsBareSize(w[len(w)-1]) && !again; n-- { // "light blue 20"
			if at := len(w) - 1 - n; l.colour == "" && l.value(r, strings.Join(w[at:len(w)-1], " "), at) {
				l.bare, w, again = w[len(w)-1], w[:at], true
			}
		}
		for n := min(mostWords, len(w)); n > 0 && !again; n-- {
			if l.value(r, strings.Join(w[:n], " "), len(w)-n) {
				w, again = w[n:], true
			}
		}
		for n := min(mostWords, len(w)); n > 0 && !again; n-- {
			if l.value(r, strings.Join(w[len(w)-n:], " "), len(w)-n) {
				w, again = w[:len(w)-n], true
			}
		}
	}
	if len(w) > 0 && l.bare == "" && (len(l.ends) > 0 || l.pin != "") && IsBareSize(w[0]) && len(w) == 1 {
		l.bare, w = w[0], nil
	}
	return w
}

// value keeps a text that is a colour or a size; left is how many words of its piece are no part of it: two small letters among several
// words are one of them, "3 og 4 er ledige".
func (l *line) value(r reader, text string, left int) bool {
	text = strings.Trim(text, ",;.")
	small := len(text) < 3 && strings.ToLower(text) == text && left > 1
	switch {
	case l.colour == "" && !small && (len(text) > 1 || left == 0 && r.key[strings.ToLower(text)] != "") && r.isColour(text):
		l.colour = text
	case l.size == "" && isSize(text):
		l.size = text
	default:
		return false
	}
	return true
}

// isColour reports whether a text is a colour, by the key of the list or by its words.
func (r reader) isColour(text string) bool {
	if strings.ContainsAny(text, "0123456789+") {
		return false
	}
	if letter, rest, more := strings.Cut(text, " "); more && len(letter) == 1 && len(rest) > 2 {
		return false // the last word of a name, "lamp R blue/white"
	}
	_, ok := value.ParseColour(r.key.InEnglish(text), r.lang)
	return ok
}

// isSize reports whether a text is a size of wire, also with "mm" for mm² or "g" for gauge.
func isSize(text string) bool {
	if !strings.ContainsAny(text, "0123456789") || text[0] == '+' || text[0] == '-' {
		return false // "+12 V"
	}
	if mm, is := strings.CutSuffix(strings.ToLower(text), "mm"); is && value.IsSection(strings.TrimSpace(mm)) {
		return true // the square is left out
	}
	if awg, is := strings.CutSuffix(strings.ToLower(text), "g"); is && IsBareSize(awg) {
		return true // "20g"
	}
	return point.IsSize(text)
}

// IsBareSize reports whether a number alone can be a gauge: an even one from 8 to 28.
func IsBareSize(text string) bool {
	switch text {
	case "8", "10", "12", "14", "16", "18", "20", "22", "24", "26", "28":
		return true
	}
	return false
}

// isCode reports whether a word can be the short form of a colour or two: up to three letters, all of them capitals.
func isCode(w string) bool {
	return len(w) <= 3 && strings.ToUpper(w) == w && strings.IndexFunc(w, func(r rune) bool { return !unicode.IsLetter(r) && r != '/' }) < 0
}
