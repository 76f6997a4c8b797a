package words

import "slices"

// WithoutNumber takes the word for number off a heading that asks for the number of a thing, long or short, before it or behind:
// "N.º de cable", "Fil n°", "Pinnr.", "Cavo n.", "Nr. ader". ok is false where it has none, or nothing else.
func WithoutNumber(all []string) (of []string, ok bool) {
	of = all
	for len(of) > 0 && isNumberWord(of[0]) {
		of = of[1:]
	}
	if len(of) < len(all) && len(of) > 1 && slices.Contains([]string{"de", "di", "du", "del", "of", "van", "da"}, of[0]) {
		of = of[1:]
	}
	for len(of) > 0 && isNumberWord(of[len(of)-1]) {
		of = of[:len(of)-1]
	}
	return of, len(of) < len(all) && len(of) > 0
}

// isNumberWord is one folded word for number; a sign of its own stays of "N.º".
func isNumberWord(w string) bool {
	return slices.Contains([]string{"n", "no", "nr", "nº", "n°", "º", "°", "num", "numero", "nummer", "number", "#"}, w)
}
