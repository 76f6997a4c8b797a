package words

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// SaysPaper reports whether a text above a table names the paper, and so no connector: the heading of the cavities says whose they
// are.
//
//	Heron ECU pinout - trial car
//	ECU pin | Function
func SaysPaper(title string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(title)), func(w string) bool {
		switch w {
		case "pinout", "pinouts", "pinning", "wiring", "pinbelegung", "verdrahtung", "brochage", "cablage", "cableado", "cablaggio",
			"okablowanie", "zapojeni", "loom", "harness", "kabelbaum", "faisceau", "mazo", "wiazka", "svazek", "kabelboom", "kabelstam",
			"ledningsnat", "chicote", "johtosarja":
			return true
		}
		return false
	})
}
