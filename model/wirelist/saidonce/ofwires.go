package saidonce

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// ofWires is what of a text can speak of wires: of several sentences those that say what they are or where they say otherwise, and none
// about another thing, "Pin 1 is at the white dot. All plugs are black unless stated."
func ofWires(text string) string {
	var kept []string
	for s := range strings.SplitSeq(strings.ReplaceAll(text, "; ", ". "), ". ") {
		if speaksOfWires(s) {
			kept = append(kept, s)
		}
	}
	return strings.Join(kept, "; ")
}

// speaksOfWires reports whether a sentence has a word for wires, or says what they are where nothing else is said and is of no other thing.
func speaksOfWires(sentence string) bool {
	all := name.Words(table.Fold(sentence))
	if slices.ContainsFunc(all, words.IsWireWord) {
		return true
	}
	for i, w := range all {
		if isPartOfPlug(w) || w == "pin" && i+1 < len(all) && value.HasDigit(all[i+1]) { // "all pins 22 AWG" is of wires
			return false
		}
	}
	return true
}

// isPartOfPlug reports whether a folded word is for something at a plug that has a colour or a size of its own.
func isPartOfPlug(w string) bool {
	switch strings.TrimSuffix(w, "s") {
	case "plug", "socket", "housing", "connector", "header", "seal", "boot", "dot", "label", "sleeve", "marker", "contact", "cap",
		"stecker", "gehause", "kontakt", "dichtung", "punkt", "tulle", "connecteur", "boitier", "joint", "fiche", "conector", "carcasa",
		"connettore", "custodia", "behuizing":
		return true
	}
	return false
}
