package saidonce

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// ofEveryWire reports whether a text says a size of the wires of all cavities or of all wires, and nothing else: "Use 22 AWG for all pins",
// "Alle Kontakte 0,5 mm²". Numbers behind the word for cavities are of some of them alone.
func ofEveryWire(text string) bool {
	all := name.Words(table.Fold(text))
	for i, w := range all {
		switch {
		case isEachCavity(w):
			if i+1 < len(all) && strings.Trim(all[i+1], "0123456789") == "" && !saysUnit(all[i+1:]) {
				return false
			}
		case saysAll(w), words.IsOfAnyWire(w), isToUse(w), strings.Trim(strings.TrimPrefix(w, "awg"), "0123456789.,") == "":
		default:
			return false
		}
	}
	return saysAll(text)
}

// saysUnit reports whether the number that some words begin with is a size: its unit stands behind it, or behind its decimals.
func saysUnit(all []string) bool {
	return slices.ContainsFunc(all[1:min(len(all), 3)], func(w string) bool {
		return w == "awg" || w == "ga" || w == "mm2" || w == "qmm" || w == "mm" || w == "sq"
	})
}

// isEachCavity reports whether a folded word is for the cavities of a connector, one or several. From memory, no source.
func isEachCavity(w string) bool {
	switch w {
	case "cavities", "contacts", "positions", "position", "ways", "circuits", "circuit", "stifte", "stiften", "kontakte", "kontakten",
		"kammern", "klemmen", "anschlusse", "broches", "bornes", "voies", "alveoles", "pines", "contactos", "piedini", "contatti",
		"morsetti", "poli", "contacten", "styki", "piny", "pinos", "contatos":
		return true
	}
	return pinword.Is(w)
}

// isToUse reports whether a folded word joins a size with what it is of: "use 22 AWG for each pin". From memory, no source.
func isToUse(w string) bool {
	switch w {
	case "use", "uses", "using", "fit", "wire", "take", "takes", "shall", "should", "must", "be", "needs",
		"need", "required", "recommended", "for", "to", "on", "at", "and", "each", "verwenden", "verwendet",
		"verwende", "nehmen", "benutzen", "fur", "an", "und", "utiliser", "utilisez", "employer", "pour", "sur",
		"usar", "utilizar", "para", "usare", "utilizzare", "per", "gebruik", "gebruiken", "voor", "anvand", "brug",
		"til", "till", "uzyj", "dla", "pro":
		return true
	}
	return false
}
