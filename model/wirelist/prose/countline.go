package prose

import (
	"strings"
	"unicode"

	"contralay/model/wirelist/table"
)

// IsCountLine reports whether a line says how many of something there are and nothing else, "Pins used: 7 of 12", "7/12 belegt",
// "Number of ways: 24 (3 free)": it names no connector. "Terminal 5" and "Spare 2" could be names. Common words, no source.
func IsCountLine(text string) bool {
	const most = 10 // words (no source)
	numbers, nouns, uses, sums, linked := 0, 0, 0, 0, false
	open := false // since the last number there were links alone, and some
	n := 0
	for w := range strings.FieldsFuncSeq(table.Fold(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }) {
		if n++; n > most {
			return false
		}
		switch {
		case strings.Trim(w, "0123456789") == "":
			numbers++
			linked, open = linked || open, false
			continue
		case isCounted(w):
			nouns++
		case isUse(w):
			uses++
		case isSum(w):
			sums++
		case isLink(w):
			open = numbers > 0
			continue
		default:
			return false
		}
		open = false
	}
	linked = linked || strings.Contains(text, "/")
	return numbers > 0 && (uses > 0 && (nouns > 0 || numbers > 1 && linked) || sums > 0 && (nouns > 0 || strings.Contains(text, ":")) ||
		nouns > 0 && numbers > 1 && linked)
}

// isCounted reports whether a folded word is for what a connector has several of.
func isCounted(w string) bool {
	switch w {
	case "pin", "pins", "contact", "contacts", "cavity", "cavities", "way", "ways", "wire", "wires", "terminal", "terminals", "position",
		"positions", "slots", "circuits", "cores", "poles", "kontakte", "adern", "leitungen", "drahte", "platze", "klemmen", "broches",
		"voies",
		"fils", "bornes", "pines", "contactos", "vias", "hilos", "cables", "polos", "contatti", "fili", "vie", "poli", "pinnen", "draden",
		"aders", "polen", "ledare", "poler", "stifte", "pinos", "fios", "piny", "przewody":
		return true
	}
	return false
}

// isUse reports whether a folded word says whether such a thing is used.
func isUse(w string) bool {
	switch w {
	case "used", "use", "populated", "fitted", "occupied", "wired", "assigned", "connected", "free", "spare", "spares", "empty", "unused",
		"loaded", "filled", "taken", "left", "belegt", "belegte", "frei", "freie", "benutzt", "verdrahtet", "bestuckt", "utilises",
		"utilisees",
		"utilise", "libres", "libre", "occupees", "occupes", "usados", "usadas", "ocupados", "ocupadas", "usati", "usate", "liberi",
		"libere",
		"occupati", "occupate", "gebruikt", "vrij", "bezet", "anvanda", "lediga", "brugt", "brukt", "livres", "uzyte", "wolne":
		return true
	}
	return false
}

// isSum reports whether a folded word leads to a number of things.
func isSum(w string) bool {
	switch w {
	case "total", "count", "number", "qty", "quantity", "anzahl", "gesamt", "summe", "nombre", "numero", "cantidad", "totale", "aantal",
		"antal", "quantidade", "liczba":
		return true
	}
	return false
}

// isLink reports whether a folded word stands between the words of a count.
func isLink(w string) bool {
	switch w {
	case "of", "out", "in", "the", "are", "is", "and", "von", "der", "davon", "und", "sind", "sur", "de", "des", "du", "et", "di",
		"su", "e",
		"y", "van", "en", "av", "af", "no", "nr", "x":
		return true
	}
	return false
}
