package saidonce

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// isAnd reports whether a folded word stands between two names.
func isAnd(w string) bool {
	switch w {
	case "and", "und", "et", "y", "e", "en", "och", "og", "i", "a", "&", "+":
		return true
	}
	return false
}

// isRest reports whether a folded word is for all wires that the sentence does not name.
func isRest(w string) bool {
	switch w {
	case "rest", "others", "remaining", "remainder", "ubrige", "ubrigen", "restliche", "restlichen", "sonst", "autres", "reste",
		"resto", "altri",
		"overige", "andere", "anderen", "ovriga", "pozostale", "ostatni":
		return true
	}
	return false
}

// saysRest reports whether a text has such a word.
func saysRest(text string) bool { return slices.ContainsFunc(name.Words(table.Fold(text)), isRest) }

// isLittle reports whether a folded word of such a sentence says nothing of which wires it speaks.
func isLittle(w string) bool {
	switch w {
	case "also", "too", "else", "other", "which", "that", "be", "being", "to", "for", "both", "auch", "ebenfalls", "andere", "aussi",
		"qui",
		"anche", "che", "tambien", "que", "ook", "die", "was", "were", "coloured", "colored", "colour", "color", "colours", "colors",
		"farbe", "farben", "couleur",
		"colore":
		return true
	case "needs", "need", "use", "uses", "takes", "take", "gets", "get", "run", "from", "bar", "only", "just",
		"cable", "cables", "kabel", "cavi", "cavo", "harness", "loom":
		return true
	}
	return words.IsOfAnyWire(w) && !words.IsWireKind(w) && w != "mm"
}

// isCounted reports whether a folded word behind a number says that it counts wires: "all 12 wires are red".
func isCounted(next string) bool {
	switch next {
	case "is", "are", "have", "of", "sind", "haben", "sont", "ont", "son", "sono", "zijn":
		return true
	}
	return words.IsWireWord(next) || name.CountWord(next) != ""
}

// isBareSize reports whether a folded word is a number as sizes of wire are written without their unit.
func isBareSize(w string) bool {
	return strings.Trim(w, "0123456789.,") == "" && len(w) < 5
}

// sizeAt is the size with its unit that a word is, or begins; taken says that the word behind it is its unit.
func sizeAt(w, next string, mark value.Mark) (size string, taken bool) {
	if rest := strings.Trim(strings.TrimLeft(w, "0123456789.,"), "0123456789"); strings.ContainsAny(rest, "-–/+x") {
		return "", false // "18-20 AWG" is no size
	}
	if size = value.SizeWithin(w, mark); size != "" {
		return size, false
	}
	if next == "" || value.HasDigit(next) && !strings.HasPrefix(next, "mm") {
		return "", false
	}
	size = value.SizeWithin(w+" "+next, mark)
	return size, size != ""
}
