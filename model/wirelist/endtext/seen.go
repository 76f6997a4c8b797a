package endtext

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/table"
)

// SeenEnd is the cavity of a connector that a cell refers to, "CN1:5" of "see CN1-5" and of "(siehe CN1 Pin 5)"; "" where it refers to
// none: "see note 3".
func SeenEnd(cell string) string {
	connector, pin, ok := name.SplitEnd(seen(cell))
	if !ok || !name.IsDesignator(connector) || !name.IsCavity(pin) {
		return ""
	}
	return connector + ":" + pin
}

// SeenConnector is the designator that a cell refers to and nothing else, "P1" of "see P1". It may be of a drawing as well.
func SeenConnector(cell string) string {
	if rest := seen(cell); name.IsDesignator(rest) && rest == strings.ToUpper(rest) {
		return rest
	}
	return ""
}

// seen is what a cell refers to, behind the word that says so.
func seen(cell string) string {
	word, rest, ok := strings.Cut(aroundSeen.Trim(strings.TrimSpace(cell)), " ")
	if !ok {
		return ""
	}
	switch table.Fold(behindSeen.TrimRight(word)) {
	case "see", "siehe", "s", "voir", "cf", "ver", "vease", "vedi", "zie", "se", "viz", "patrz", "same":
	default:
		return ""
	}
	rest = strings.TrimSpace(rest)
	for _, lead := range []string{"as ", "at ", "wire at ", "under "} {
		rest = strings.TrimPrefix(rest, lead)
	}
	return rest
}

// Signs round a text that refers to something, and behind the word that does.
var aroundSeen, behindSeen = signs.Of("()[]."), signs.Of(".:")
