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

// LettersOf is the key to a column of colours that is written in these letters; nil where it is not. Where a sign parts main colour and
// tracer, two letters without one are the short form of one colour: "BK" beside "R/G" is black.
func LettersOf(cells []string) ColourKey {
	if !AreLetters(cells) {
		return nil
	}
	whole, signs := ColourKey{}, false
	for _, c := range cells {
		if signs = signs || strings.ContainsAny(c, "/-+"); len(c) != 2 || table.Fold(c) == "lg" {
			continue
		}
		if of, ok := value.ParseColour(c, ""); ok {
			whole[table.Fold(c)] = of.String()
		} else if !value.IsNothing(c) && !value.IsDitto(c) {
			return LetterKey() // "NY"
		}
	}
	if !signs || len(whole) == 0 {
		return LetterKey()
	}
	for letter, word := range LetterKey() {
		whole[letter] = word
	}
	return whole
}

// AreLetters reports whether the cells of a column of colours are written in these letters: all of them but words for colours and marks
// of repetition, some of which nobody reads otherwise ("BU" is blue), and among them U, and one of N, W and Y, which together no other
// code of single letters has. Where no wire is blue, N does for U beside letters that are those of English words.
func AreLetters(cells []string) bool {
	const least = 4 // cells (no source)
	key := LetterKey()
	n, strange, small := 0, 0, 0
	met := map[rune]bool{}   // letters
	alone := map[rune]bool{} // those that are a cell
	brown, short := false, false
	for _, c := range cells {
		f := table.Fold(c)
		_, read := value.ParseColour(c, "")
		if value.IsNothing(c) || value.IsDitto(c) || read && len(c) > 2 && !isUpper(c) {
			continue
		}
		if len(c) > 5 || c != strings.ToUpper(c) && c != strings.ToLower(c) || !key.Written(c) {
			return false
		}
		for _, r := range f {
			met[r] = true
		}
		if len(f) == 1 {
			alone[rune(f[0])] = true
		}
		brown = brown || len(f) > 1 && strings.Contains(f, "n") && !read
		short = short || read && len(f) == 2
		if !read {
			strange++
		}
		if c != strings.ToUpper(c) {
			small++
		}
		n++
	}
	english := met['n'] || met['w'] || met['y']
	withoutBlue := alone['n'] && brown && alone['b'] && (alone['w'] || alone['y']) && !short && small == 0
	return n >= least && strange > 1 && 4*strange >= n && (small == 0 || small == n) && (met['u'] && english || withoutBlue)
}
