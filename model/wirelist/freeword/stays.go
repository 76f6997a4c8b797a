package freeword

import "strings"

// A person who is asked to leave a cavity free is told so in words: "stays empty please", "bleibt frei", "leave blank for now".
var (
	staying = [...]string{"stays ", "stay ", "left ", "leave ", "remains ", "keep ", "bleibt ", "reste ", "queda ", "resta ", "blijft ",
		"lamnas "}
	politely = [...]string{" please", " for now", " bitte", " svp", " por favor", " at the moment", " as it is"}
)

// withoutStaying takes such words off a folded text.
func withoutStaying(folded string) string {
	if !strings.Contains(folded, " ") {
		return folded // most cells
	}
	for _, end := range politely {
		folded = strings.TrimSuffix(folded, end)
	}
	for _, lead := range staying {
		if folded[0] == lead[0] && strings.HasPrefix(folded, lead) {
			switch rest := folded[len(lead):]; rest {
			case "empty", "free", "blank", "blanked", "unused", "vacant", "unconnected", "not connected", "frei", "leer", "unbelegt",
				"libre", "vide", "vacio", "libero", "libera", "vuoto", "vrij", "leeg", "tom":
				return rest // "left -" is a name
			}
		}
	}
	return folded
}
