package name

import (
	"slices"
	"strconv"

	"contralay/model/wirelist/table"
)

// saysHarness reports whether a title has a word for a whole harness: it is the name of the paper, not of a connector.
func saysHarness(title string) bool {
	return slices.ContainsFunc(Words(table.Fold(title)), func(w string) bool {
		switch w {
		case "loom", "harness", "kabelbaum", "faisceau", "cablaggio", "impianto", "mazo", "wiazka", "svazek", "kabelboom", "kabelstam",
			"ledningsnat", "chicote", "johtosarja":
			return true
		}
		return false
	})
}

// countedConnector is how many cavities a piece of a title says of its connector, and nothing else: "24 pin plug"; 0 for all else.
func countedConnector(piece string) (n int) {
	word := false
	for _, w := range Words(table.Fold(piece)) {
		switch k, err := strconv.Atoi(w); {
		case err == nil && n == 0:
			n = k
		case IsConnectorWord(w):
			word = true
		case w != "pin" && w != "pins" && w != "pol" && CountWord(w) != "cavities":
			return 0
		}
	}
	if !word {
		return 0
	}
	return n
}
