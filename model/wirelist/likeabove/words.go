package likeabove

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// sort is what a line says is the same as in the line above.
type sort int

const (
	nothing sort = iota
	sameSize
	sameColour
	sameAll
)

// same finds the words behind the first comma of a line that say a value is that of the line above, and which value.
//
//	green, same size
//	green (gleicher Querschnitt)
//	ditto
func same(text string) (what string, of sort) {
	comma := strings.Index(text, ", ")
	if comma < 0 {
		return "", nothing
	}
	for p := range strings.SplitSeq(text[comma+2:], ", ") {
		if p = strings.Trim(p, " .;"); value.IsDitto(p) {
			return p, sameAll
		}
	}
	w := strings.Fields(text[comma+2:])
	for i := range w {
		if !isSame(table.Fold(strings.TrimLeft(w[i], "("))) {
			continue
		}
		last := i + 1
		if last < len(w) && isSmallWord(table.Fold(w[last])) { // "same wire size"
			last++
		}
		if last >= len(w) {
			return "", nothing
		}
		first, end := strings.TrimLeft(w[i], "("), strings.TrimRight(w[last], ".,;)")
		words := slices.Clone(w[i : last+1])
		words[0], words[len(words)-1] = first, end
		if of = valueOf(table.Fold(end)); of != nothing {
			return strings.Join(words, " "), of
		}
	}
	return "", nothing
}

// isSame reports whether a folded word says that something is the same.
func isSame(w string) bool {
	switch w {
	case "same", "zelfde", "dezelfde", "gleicher", "gleiche", "gleichem", "gleichen", "gleiches", "selber", "selbe", "selben", "meme",
		"misma", "mismo", "stessa", "stesso", "mesma", "mesmo", "samma", "samme", "sama", "ten", "taki", "stejny", "stejna", "identical":
		return w != "ten"
	}
	return false
}

// isSmallWord reports whether a folded word stands between "same" and the value.
func isSmallWord(w string) bool {
	switch w {
	case "wire", "cable", "as", "de", "di", "do", "da", "ader", "draad":
		return w != "as"
	}
	return false
}

// valueOf says which value a folded word is for.
func valueOf(w string) sort {
	switch w {
	case "size", "gauge", "section", "csa", "thickness", "awg", "dikte", "doorsnede", "diameter", "querschnitt", "starke", "dicke",
		"staerke", "seccion", "calibre", "grosor", "sezione", "spessore", "seccao", "bitola", "area", "tjocklek", "tykkelse",
		"tverrsnitt", "tvaersnit", "tvarsnitt", "przekroj", "prurez":
		return sameSize
	case "colour", "color", "farbe", "couleur", "kleur", "colore", "cor", "farg", "farge", "farve", "kolor", "barva":
		return sameColour
	}
	return nothing
}
