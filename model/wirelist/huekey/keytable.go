package huekey

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// IsKeyPair reports whether one cell can be the short form of the colour that another says in a word, "LG" and "light green".
func IsKeyPair(short, word string) bool {
	if !isShortForm(short) || strings.ContainsAny(short, "+-/?") || len(word) < 3 || len(short) >= len(word) {
		return false
	}
	c, ok := value.ParseColour(word, "")
	return ok && len(c) <= 2
}

// IsShortOf reports whether the letters of a short form stand in a word, in their order: "U" of "blue", "BK" of "black".
func IsShortOf(short, word string) bool {
	rest := table.Fold(word)
	for _, letter := range table.Fold(short) {
		i := strings.IndexRune(rest, letter)
		if i < 0 {
			return false
		}
		rest = rest[i+len(string(letter)):]
	}
	return true
}

// IsKeyWord reports whether a word is one that heads a key to colours, "Colours", "Legende".
func IsKeyWord(w string) bool { return isLeadOfKey(w) }

// Written reports whether a cell is one of the short forms, or two or three of them, together or with a sign between.
func (k ColourKey) Written(cell string) bool {
	n := 0
	for _, w := range strings.FieldsFunc(cell, func(r rune) bool { return strings.ContainsRune(" /-+,", r) }) {
		if k.together(w) == nil {
			return false
		}
		n++
	}
	return n > 0 && n <= value.MostHues
}

// together parts short forms that are written without a sign between them, "LGB" in "LG" and "B": the longest first. nil where
// the word is anything else.
func (k ColourKey) together(w string) (words []string) {
	for rest := table.Fold(w); rest != ""; {
		n := min(len(rest), mostShort)
		for n > 0 && k[rest[:n]] == "" {
			n--
		}
		if n == 0 || len(words) == value.MostHues {
			return nil
		}
		words = append(words, k[rest[:n]])
		rest = rest[n:]
	}
	return words
}

// mostShort is how many letters a short form has at most, in bytes.
const mostShort = 6

// apart is together of a word that no list would write for a colour of its own, "UR": not "red", "gry".
func (k ColourKey) apart(w string) (string, bool) {
	words := k.together(w)
	if words == nil {
		return "", false
	}
	if _, whole := value.ParseColour(w, ""); whole && len(w) > 2 && len(words) > 1 && !isUpper(w) {
		return "", false
	}
	return strings.Join(words, "/"), true
}

func isUpper(w string) bool { return w == strings.ToUpper(w) }
