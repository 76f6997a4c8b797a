package huekey

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// keyByPieces reads a key that has a short form and its word between each two commas, behind a text that leads to it and before one
// that says more of it: "Letters of the wires: N brown, R red, U blue, a slash is a stripe".
func keyByPieces(text string) ColourKey {
	const longest, led = 6, 16 // words of what leads to a key, and of what has a word for one (no source)
	if strings.Count(text, ",")+strings.Count(text, ";") < leastPieces-1 {
		return nil
	}
	if lead, rest, ok := strings.Cut(text, ": "); ok && !strings.ContainsAny(lead, ",;=") {
		w := strings.Fields(lead)
		if len(w) <= longest || len(w) <= led && slices.ContainsFunc(w, isLeadOfKey) {
			text = rest
		}
	}
	text = withoutOtherWords(text)
	key := ColourKey{}
	letters := 0
	for piece := range strings.FieldsFuncSeq(text, func(r rune) bool { return r == ',' || r == ';' }) {
		short, word, ok := strings.Cut(strings.Trim(piece, " ."), " ")
		word = strings.TrimLeft(word, " =:–-")
		short = strings.TrimRight(short, " =:")
		word, _, _ = strings.Cut(word, ". ")
		if !ok || !isShortForm(short) || len(word) < 3 || !IsKeyPair(short, word) {
			break
		}
		if IsShortOf(short, word) {
			letters++
		}
		key[table.Fold(short)] = word
	}
	if len(key) < leastPieces || 4*letters < 3*len(key) {
		return nil
	}
	return key
}

// leastPieces is how many short forms such a key has at least (no source).
const leastPieces = 3
