package words

import (
	"slices"
	"strings"
)

// NumberOf are the ways to look up a heading that asks for the number of a thing, with the word for number before it or behind, long or
// short: "N.º de cable", "Fil n°", "Pinnr.", "Cavo n.", "Nr. ader". What the number makes of a word comes first: the number of a cable
// is what its wire is called in Spanish. nil for any other heading.
func NumberOf(all []string) []string {
	of := all
	for len(of) > 0 && IsNumberWord(of[0]) {
		of = of[1:]
	}
	if len(of) < len(all) && len(of) > 1 && slices.Contains([]string{"de", "di", "du", "del", "of", "van", "da"}, of[0]) {
		of = of[1:]
	}
	for len(of) > 0 && IsNumberWord(of[len(of)-1]) {
		of = of[:len(of)-1]
	}
	if len(of) == len(all) || len(of) == 0 {
		return nil
	}
	called := strings.Join(of, " ")
	return []string{"numero de " + called, called + " no", called}
}

// IsNumberWord reports whether a folded word is one for number; a sign of its own stays of "N.º".
func IsNumberWord(w string) bool {
	return slices.Contains([]string{"n", "no", "nr", "nº", "n°", "º", "°", "num", "numero", "nummer", "number", "#"}, w)
}
