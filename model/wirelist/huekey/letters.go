package huekey

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// LetterKey is the key to the letters by which the wires of old British vehicles are marked, one for each colour: U is blue, which no
// other code has. BS AU 7 has them; from memory, no source.
func LetterKey() ColourKey { return letterKey }

// letterKey is made once: each piece of a line is held against it.
var letterKey = ColourKey{"b": "black", "g": "green", "k": "pink", "lg": "light green", "n": "brown", "o": "orange", "p": "purple",
	"r": "red", "s": "grey", "u": "blue", "w": "white", "y": "yellow"}

// AreLetters reports whether the cells of a column of colours are written in these letters: all of them, some of which
// nobody reads otherwise ("BU" is blue), and among them U, and one of N, W and Y, which together no other code of single letters has.
func AreLetters(cells []string) bool {
	const least = 4 // cells (no source)
	key := LetterKey()
	n, strange, blue, english := 0, 0, false, false
	for _, c := range cells {
		if value.IsNothing(c) {
			continue
		}
		if len(c) > 5 || c != strings.ToUpper(c) || !key.Written(c) {
			return false
		}
		f := table.Fold(c)
		blue, english = blue || strings.Contains(f, "u"), english || strings.ContainsAny(f, "nwy")
		if _, ok := value.ParseColour(c, ""); !ok {
			strange++
		}
		n++
	}
	return n >= least && strange > 1 && 4*strange >= n && blue && english
}
