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
	for len(w) > 0 && slices.Contains([]string{"the", "die", "der", "les", "las", "los", "i", "le", "de"}, table.Fold(w[0])) {
		w = w[1:]
	}
	if len(w) < 3 || len(w) > 20 || !IsCavityWord(table.Fold(w[0])) {
		return nil
	}
	at := 1
	for ; at < len(w) && !isBeing(w[at]) && !strings.HasSuffix(w[at], ":"); at++ {
	}
	list, rest := w[1:min(at, len(w))], w[min(at+1, len(w)):]
	if at < len(w) && strings.HasSuffix(w[at], ":") {
		list = append(slices.Clone(list), strings.TrimSuffix(w[at], ":"))
	}
	for len(rest) > 1 && slices.Contains([]string{"all", "both", "left", "alle", "beide", "toutes", "tous", "todos", "tutti"},
		table.Fold(rest[0])) {
		rest = rest[1:]
	}
	if name.StateOf(strings.Join(rest, " ")) != name.Blank && !isFree(table.Fold(strings.Join(rest, " "))) {
		return nil
	}
	return cavitiesOf(strings.Join(list, " "))
}

// cavitiesOf parts "8 and 9", "3, 4, 7-9" and "A1 to A4" in cavities; nil where some word is none.
func cavitiesOf(list string) (all []string) {
	for _, word := range []string{" to ", " bis ", " through ", " thru ", " - ", " – "} {
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
		"no contacts", "no wires", "no wire in them", "keinen kontakt", "keine kontakte", "keinen draht",
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
