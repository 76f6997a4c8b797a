package shape

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
)

// numberOf reads a heading that asks for the number of a thing, with the word for number before it or behind, short or long:
// "N.º de cable", "Fil n°", "Pinnr.", "Cavo n.", "Nr. ader". A word that the number makes another is looked up with it: the number of
// a cable is what its wire is called in Spanish.
func (h Headings) numberOf(all []string) (name.Meaning, bool) {
	of := all
	for len(of) > 0 && isNumberWord(of[0]) {
		of = of[1:]
	}
	if len(of) < len(all) && len(of) > 1 && slices.Contains([]string{"de", "di", "du", "del", "of", "van", "da"}, of[0]) {
		of = of[1:]
	}
	for len(of) > 0 && isNumberWord(of[len(of)-1]) {
		of = of[:len(of)-1]
	}
	if len(of) == len(all) || len(of) == 0 {
		return name.Meaning{}, false
	}
	called := strings.Join(of, " ")
	for _, try := range []string{"numero de " + called, called + " no", called} {
		if m, ok := h.Words[try]; ok && !m.Weak {
			return m, true
		}
	}
	return name.Meaning{}, false
}

// isNumberWord is one folded word for number; a sign of its own stays of "N.º".
func isNumberWord(w string) bool {
	return slices.Contains([]string{"n", "no", "nr", "nº", "n°", "º", "°", "num", "numero", "nummer", "number", "#"}, w)
}
