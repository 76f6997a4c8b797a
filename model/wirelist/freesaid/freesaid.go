// Package freesaid reads the sentences behind a table of cavities that say which of its connector are free.
//
//	Pin 1 - coil + (red)
//	Pin 2 - coil - (blue)
//	Pins 3 and 4 are empty.
//
// It knows no connector; package wirelist asks it of the texts behind each table.
package freesaid

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/table"
)

// Cavities are those that a sentence says are free; nil where it says anything else of them, or anything besides. "Pins 3 and 4 are empty
// in the old loom" and "the rest is empty" are none.
func Cavities(text string) (all []string) {
	w := strings.Fields(strings.TrimRight(strings.TrimSpace(text), ". "))
	for len(w) > 0 && slices.Contains(articles(), table.Fold(w[0])) {
		w = w[1:]
	}
	if len(w) < 3 || len(w) > 20 || !IsCavityWord(table.Fold(w[0])) {
		return nil
	}
	for at := 2; at < len(w); at++ {
		if rest := w[at:]; isFreeWords(rest) {
			return cavitiesOf(strings.TrimSuffix(strings.Join(w[1:at], " "), ":"))
		}
	}
	return nil
}

// isFreeWords reports whether the words behind some cavities say that those are free and nothing else: "are both empty", "nothing in them".
func isFreeWords(w []string) bool {
	if isBeing(w[0]) {
		w = w[1:]
	}
	for len(w) > 1 && slices.Contains([]string{"all", "both", "left", "alle", "beide", "toutes", "tous", "todos", "tutti"},
		table.Fold(w[0])) {
		w = w[1:]
	}
	text := strings.Join(w, " ")
	return name.StateOf(text) == name.Blank || isFree(table.Fold(text))
}

// cavitiesOf parts "8 and 9", "3, 4, 7-9" and "A1 to A4" in cavities; nil where some word is none.
func cavitiesOf(list string) (all []string) {
	for _, word := range []string{" to ", " bis ", " through ", " thru ", " - ", " – ", " à ", " tot ", " t/m ", " till ", " til ",
		" hasta ", " fino a "} {
		list = strings.ReplaceAll(list, word, "-")
	}
	words := strings.FieldsFunc(list, func(r rune) bool { return strings.ContainsRune(" ,&+/", r) })
	for k, w := range words {
		if k > 0 && k+1 < len(words) && slices.Contains([]string{"and", "und", "et", "y", "e", "en", "och", "og", "i", "ja", "a", "oraz"},
			w) {
			continue // "E and F" are two cavities
		}
		if of, _, ok := name.Spread(w, nil); ok {
			all = append(all, of...)
			continue
		}
		if !name.IsCavity(w) {
			return nil
		}
		all = append(all, w)
	}
	return all
}

// isFree reports whether some words say of several cavities that they have no wire, as the words for one are elsewhere.
func isFree(folded string) bool {
	switch folded {
	case "vides", "libres", "libros", "vacios", "liberi", "vuoti", "leere", "inutilises", "non utilises", "non connectes", "sin usar",
		"no conectados", "non collegati", "lediga", "vapaita", "vapaat", "volne", "wolne", "livres",
		"tomma", "tomme", "ledige", "leeg", "without wires", "without a wire", "sealed off",
		"no contacts", "no wires", "no wire in them", "nothing in them", "nothing in it", "nothing in there", "nothing there",
		"with nothing in them", "with nothing in it", "nichts drin", "nix drin", "nichts drinnen", "ist nichts drin", "rien dedans",
		"nada dentro", "sin nada", "niente dentro", "niets in", "ingenting i dem", "intet i dem",
		"keinen kontakt", "keine kontakte", "keinen draht",
		"pas de contact", "pas de fil", "sin contacto",
		"no contacto", "nessun contatto", "geen contact", "ingen kontakt":
		return true
	}
	return false
}

// IsCavityWord reports whether a folded word says that the names of cavities follow, one or several.
func IsCavityWord(w string) bool {
	switch w {
	case "cavities", "ways", "position", "positions", "contact", "contacts", "terminals", "kontakte", "stifte", "poles", "broches",
		"bornes", "pines", "pinos", "poli", "stiften", "pinnar", "pinner", "benene", "nastat", "navat", "pinnit", "koliky", "piny", "styki",
		"zaciski", "klemmer", "klemmar", "pennen":
		return true
	}
	return pinword.Is(w)
}

func isBeing(w string) bool {
	if w == strings.ToUpper(w) && len(w) == 1 {
		return false // "pins E and F"
	}
	switch table.Fold(w) {
	case "is", "are", "stay", "stays", "remain", "remains", "sind", "ist", "bleiben", "bleibt", "est", "sont", "es", "son", "esta", "estan",
		"e", "sono", "zijn", "ar", "er", "has", "have", "hat", "haben", "ont", "tienen", "hanno", "hebben", "har",
		"ovat", "jsou", "sa", "sao":
		return true
	}
	return false
}
