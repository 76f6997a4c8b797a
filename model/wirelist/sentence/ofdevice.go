package sentence

import (
	"strings"
	"unicode"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// ConnectorOfDevice is the connector that one of some sentences names by the device it is of, "connector of the dash" of "Here is the
// connector of the dash of my kart, …"; "" where none does, or two differ.
func ConnectorOfDevice(texts []string) (found string) {
	for _, t := range texts {
		all := strings.Fields(t)
		for i := range all {
			switch of := ofDevice(all[i:]); {
			case of == "" || of == found:
			case found != "":
				return ""
			default:
				found = of
			}
		}
	}
	return found
}

// ofDevice is the first words of a text where they are a connector and its device: "conector de la centralita", "ECU connector".
func ofDevice(all []string) string {
	if len(all) < 2 || !isBare(all[0]) {
		return ""
	}
	first := table.Fold(all[0])
	if next := strings.TrimRight(all[1], ".,:;!"); name.IsUnit(first) && name.IsConnectorWord(table.Fold(next)) {
		return all[0] + " " + next
	}
	if !name.IsConnectorWord(first) || !words.IsOfDevice(table.Fold(all[1])) {
		return ""
	}
	at := 2
	for at < len(all) && words.IsArticle(table.Fold(all[at])) {
		at++
	}
	if at >= len(all) {
		return ""
	}
	device := strings.TrimRight(all[at], ".,:;!")
	if f := table.Fold(device); !isBare(device) || len(device) < 3 || words.IsOwner(f) || words.IsPaper(f) {
		return ""
	}
	return strings.Join(append(append([]string{}, all[:at]...), device), " ")
}

// isBare reports whether a word is letters alone.
func isBare(w string) bool {
	return !strings.ContainsFunc(w, func(r rune) bool { return !unicode.IsLetter(r) && r != '-' && r != '\'' })
}
