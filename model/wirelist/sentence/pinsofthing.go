package sentence

import (
	"cmp"
	"strings"
	"unicode"
	"unicode/utf8"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// Connector is the connector that some sentences above a table name, by its count, by the device that it is of, or by whose pins are told.
// rivals is what it could be called as well: the name of the file, where the sentences are no more than a hint.
func Connector(texts []string, file string) (called string, rivals []string) {
	if called = CountedConnector(texts); called != "" {
		return called, nil
	}
	return cmp.Or(ConnectorOfDevice(texts), pinsOf(texts)), []string{file}
}

// pinsOf is the thing whose pins one of some sentences says that the table is of, "Grove Hub" of "The pins on the Grove Hub are in the
// table below", "lift control box" of "connections from the cab to the lift control box"; "" where none does, or two differ.
func pinsOf(texts []string) (found string) {
	for _, t := range texts {
		switch of := pinsOfThing(strings.Fields(t)); {
		case of == "" || strings.EqualFold(of, found):
		case found != "":
			return ""
		default:
			found = of
		}
	}
	return found
}

// pinsOfThing is the name behind the last "on the" or "to the" that follows the word for pins in a sentence.
func pinsOfThing(all []string) (found string) {
	pins := false
	for i, w := range all {
		folded := strings.Trim(table.Fold(w), ".,:;()\"'*_")
		if arePins(folded) {
			pins = true
			continue
		}
		if pins && i+2 < len(all) && isOn(folded) && words.IsArticle(table.Fold(all[i+1])) && !words.IsOwner(table.Fold(all[i+1])) {
			if of := thingIn(all[i+2:]); of != "" {
				found = of
			}
		}
		if strings.HasSuffix(w, ".") {
			pins = false
		}
	}
	return found
}

// thingIn is the name that a text begins with: words with a capital each, or a few that end with one for what has pins.
func thingIn(all []string) string {
	const most = 4 // words (no source)
	capitals := 0
	for k, w := range all[:min(len(all), most)] {
		bare := strings.TrimRight(w, ".,:;)")
		first, _ := utf8.DecodeRuneInString(bare)
		if bare == "" || !unicode.IsLetter(first) || arePins(table.Fold(bare)) {
			break
		}
		if hasPins(table.Fold(bare)) && k > 0 {
			return strings.Join(append(append([]string{}, all[:k]...), bare), " ")
		}
		if capitals == k && unicode.IsUpper(first) {
			capitals++
		}
		if bare != w {
			break
		}
	}
	if capitals == 0 {
		return ""
	}
	of := strings.TrimRight(strings.Join(all[:capitals], " "), ".,:;)")
	if len(of) < 3 || words.IsPaper(table.Fold(of)) || name.IsGeneric(of) {
		return ""
	}
	return of
}

// arePins reports whether a folded word is one for the pins of something, all of them. Common words, from memory, no source.
func arePins(w string) bool {
	switch w {
	case "pins", "pinout", "connections", "terminals", "belegung", "pinbelegung", "anschlusse", "klemmen", "brochage", "broches",
		"connexions",
		"bornes", "pines", "conexiones", "pinos", "ligacoes", "piedini", "collegamenti", "aansluitingen", "anslutningar", "piny":
		return true
	}
	return false
}

// isOn reports whether a folded word joins pins with what they are on.
func isOn(w string) bool {
	switch w {
	case "on", "of", "at", "to", "for", "am", "an", "vom", "des", "der", "zum", "sur", "du", "de", "della", "del", "al", "van", "op", "pa":
		return true
	}
	return false
}

// hasPins reports whether a folded word is for a thing that has pins, and no cable.
func hasPins(w string) bool {
	return name.IsConnectorWord(w) || name.IsUnit(w) || w == "port" || w == "board" || w == "box" || w == "module" || w == "card"
}
