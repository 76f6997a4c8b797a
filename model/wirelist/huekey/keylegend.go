package huekey

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// KeyOfLegend reads the cells of a row that says what one short form or a few mean: a word that leads to a key stands before them,
// "Legende: DBU = dunkelblau; AEH = Aderendhülse", or they are all of the row and no list has those short forms for another colour,
// "DBU = dunkelblau". What is of no colour is left out. nil where no short form of a colour is told.
func KeyOfLegend(cells []string) ColourKey {
	key, led, whole := ColourKey{}, false, true
	for _, cell := range cells {
		for piece := range strings.FieldsFuncSeq(cell, func(r rune) bool { return r == ',' || r == ';' || r == '|' }) {
			piece = strings.Trim(piece, " .")
			if rest, ok := cutLead(piece); ok {
				led, piece = true, rest
			}
			if piece == "" {
				continue
			}
			short, word, ok := strings.Cut(piece, "=")
			short, word = strings.TrimSpace(short), strings.TrimSpace(word)
			colour, is := value.ParseColour(word, "")
			whole = whole && ok && is && len(word) > 2
			if ok && is && len(colour) == 1 && IsKeyPair(short, word) {
				_, known := value.ParseColour(short, "")
				whole = whole && !known
				key[table.Fold(short)] = word
			}
		}
	}
	if len(key) == 0 || !led && !whole {
		return nil
	}
	return key
}

// cutLead parts what leads to a key from the key: words with a colon behind, one of them for a key, "Farbcode:", "Key to colours:".
func cutLead(text string) (rest string, ok bool) {
	const longest = 4 // words (no source)
	lead, rest, ok := strings.Cut(text, ":")
	if !ok || strings.Contains(lead, "=") {
		return text, false // most cells
	}
	words := strings.Fields(lead)
	if len(words) == 0 || len(words) > longest {
		return text, false
	}
	for _, w := range words {
		if isLeadOfKey(w) {
			return strings.TrimSpace(rest), true
		}
	}
	return text, false
}
