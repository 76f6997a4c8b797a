package words

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// cableEnds are the words for a cable, which may be the end of a longer one; cableHeads those of languages with the noun before what it
// is of. Common words, from memory, no source.
var (
	cableEnds  = []string{"cable", "cord", "lead", "umbilical", "kabel", "leitung", "leiding", "snoer", "ledning", "kaapeli"}
	cableHeads = []string{"cable", "cordon", "cavo", "cabo", "przewod", "kabel", "kablo"}
)

// NamesCable reports whether some words name one cable, "Coiled cord", "Sensorleitung links", "Cavo sonda".
func NamesCable(w []string) bool {
	return slices.Contains(cableHeads, table.Fold(w[0])) || slices.ContainsFunc(w, func(one string) bool {
		one = table.Fold(one)
		return slices.ContainsFunc(cableEnds, func(s string) bool { return one == s || len(s) > 4 && strings.HasSuffix(one, s) })
	})
}

// SaysEach reports whether a folded word says that a size is that of each core.
func SaysEach(w string) bool {
	switch strings.Trim(w, ".,") {
	case "each", "per", "core", "je", "jeweils", "chacun", "chaque", "cada", "uno", "ciascuno", "ognuno", "elk", "ieder", "vardera", "hver",
		"kazda", "of", "de", "da", "a", "à":
		return true
	}
	return false
}
