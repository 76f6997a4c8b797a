package titleline

import (
	"strings"

	"contralay/model/wirelist/table"
)

// namedBox is the designator at the end of a title that says which box it is, "Fuse panel PF2", "Breaker panel CB2", "Sicherungskasten F4";
// "" where it says none. The other lists call the box by it.
//
//	Fuse panel PF2            Circuit | From  | To
//	Way | Feeds  | Amps       Fridge  | PF2-1 | FR-1
//	1   | Fridge | 5
func namedBox(title string) string {
	w := strings.Fields(title)
	if len(w) < 2 || len(w) > 4 || !isOwnDesignator(w[len(w)-1]) {
		return ""
	}
	for k := range len(w) - 1 {
		if !isBoxWord(table.Fold(w[k])) {
			return ""
		}
	}
	return w[len(w)-1]
}

// isBoxWord reports whether a word is one of those that a box of fuses, of breakers or of relays is called by. From memory, no source.
func isBoxWord(w string) bool {
	switch w {
	case "fuse", "fuses", "breaker", "breakers", "circuit", "relay", "relays", "junction", "distribution", "power", "box", "block", "panel",
		"board", "carrier", "main", "fusebox", "fuseblock", "fusepanel", "sicherungskasten", "sicherungsbox", "sicherungsdose",
		"sicherungstrager", "sicherungshalter", "relaisbox", "relaiskasten", "relaistrager", "verteiler", "verteilerkasten", "boite", "a",
		"fusibles", "relais", "boitier", "platine", "scatola", "fusibili", "rele", "caja", "zekeringkast", "zekeringenkast",
		"sakringsbox", "sikringsboks", "sikringsdase":
		return true
	}
	return false
}
