package saidonce

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// A note below a list says the size of the wires whose rows say none.
//
//	everything without a size is 22 AWG
//	where no size is given: 20 AWG
//	alles ohne Angabe 0,5 mm²

// saysOfNoSize reports whether a text says a size of what has none, and nothing else: each of its words is one of those below, a word for
// wires or a part of the size. "The pump wire has no size, ask Ray for 20 AWG" is something else.
func saysOfNoSize(text string, mark value.Mark) bool {
	const longest = 80 // bytes (no source)
	if len(text) > longest || !value.HasDigit(text) {
		return false
	}
	none, sized := false, false
	for _, w := range name.Words(table.Fold(text)) {
		switch {
		case isWithout(w):
			none = true
		case isWordForSize(w):
			sized = true
		case isGiven(w), isNoSizeFiller(w), saysAll(w), isRest(w), words.IsOfAnyWire(w), isEachCavity(w), isToUse(w):
		case strings.Trim(strings.TrimPrefix(w, "awg"), "0123456789.,") == "", w == "mm2", w == "mm²", w == "qmm", w == "awg",
			w == "ga", value.SizeWithin(w, mark) != "":
		default:
			return false
		}
	}
	return none && sized
}

// isWithout reports whether a folded word says that something is not there. From memory, no source.
func isWithout(w string) bool {
	switch w {
	case "without", "no", "not", "ohne", "kein", "keine", "keinen", "nicht", "sans", "pas", "aucune", "sin", "senza",
		"non", "zonder", "geen",
		"utan", "ingen", "uden", "uten", "bez", "brak", "sem", "ilman", "nelkul":
		return true
	}
	return false
}

// isWordForSize reports whether a folded word is for the size of a wire, or for what a list says of it. From memory, no source.
func isWordForSize(w string) bool {
	switch w {
	case "size", "sizes", "gauge", "gauges", "awg", "section", "angabe", "angaben", "querschnitt", "querschnitte", "querschnittsangabe",
		"mass", "massangabe", "indication", "mention", "seccion", "indicacion", "sezione", "indicazione", "doorsnede", "maat", "opgave",
		"vermelding", "area", "uppgift", "tvarsnitt", "storlek", "angivelse", "storrelse", "przekroju", "oznaczenia", "prurezu", "udaje",
		"seccao", "bitola", "indicacao", "merkintaa", "jeloles":
		return true
	}
	return false
}

// isGiven reports whether a folded word says that a list says something. From memory, no source.
func isGiven(w string) bool {
	switch w {
	case "given", "stated", "said", "marked", "written", "noted", "listed", "shown", "says", "gives", "has", "have", "angegeben", "steht",
		"dabei", "indiquee", "precisee", "donnee", "indicada", "dada", "indicata", "data", "scritta", "opgegeven", "vermeld", "angiven",
		"angivet", "angitt", "podano", "uvedeno", "udany":
		return true
	}
	return false
}

// isNoSizeFiller reports whether a folded word of such a text says nothing by itself. From memory, no source.
func isNoSizeFiller(w string) bool {
	switch w {
	case "everything", "anything", "where", "wherever", "which", "that", "if", "is", "are", "a", "an", "any", "the", "of", "with", "it",
		"its", "in", "alles", "wo", "ist", "sind", "was", "tout", "toute", "ou", "est", "sont", "n", "la", "le", "il", "y", "todo", "todos",
		"donde", "es", "son", "tutto", "tutti", "dove", "e", "sono", "waar", "zijn", "allt", "alt", "som", "er", "ar", "dar", "hvor",
		"wszystko", "gdzie", "jest", "vse", "kde", "je", "tudo", "onde":
		return true
	}
	return false
}
