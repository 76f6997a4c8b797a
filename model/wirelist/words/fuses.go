package words

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// fuseBoxes are the words for a fuse, or for what holds fuses, folded. From memory, no source.
var fuseBoxes = []string{"fuse", "fusebox", "fuseblock", "fuseway", "fuseholder", "breaker", "mcb",
	"sicherung", "sicherungskasten", "sicherungshalter", "sicherungsdose", "sicherungsplatz", "sicherungsautomat",
	"fusible", "fusibles", "portafusible", "disjoncteur", "disyuntor", "fusibile", "portafusibili", "portafusibile",
	"zekering", "zekeringkast", "zekeringhouder", "sakring", "sakringsbox", "sakringsdosa", "sakringshallare", "sikring", "sikringsboks",
	"sikringsdase", "sikringsholder", "sulake", "sulakerasia", "bezpiecznik", "pojistka", "pojistkova", "biztosito", "sigorta", "fusivel",
	"disjuntor", "siguranta"}

// IsFuseWay reports whether a place is one fuse of several: a word for fuses, and its number at the end, "Fuse box 1", "Zekeringkast 2".
func IsFuseWay(place string) bool {
	all := strings.Fields(table.Fold(name.WithoutBrackets(place)))
	const most = 4 // words (no source)
	if len(all) < 2 || len(all) > most || strings.Trim(all[len(all)-1], "0123456789") != "" {
		return false
	}
	return slices.ContainsFunc(all, func(w string) bool { return slices.Contains(fuseBoxes, w) })
}

// HoldsFuses reports whether a heading is for what holds fuses, and nothing else: "Fuse box", "Sicherungskasten", "Boîte à fusibles".
func HoldsFuses(head string) bool {
	is := false
	for _, w := range name.Words(table.Fold(head)) {
		switch {
		case slices.Contains(fuseBoxes, w) || w == "fuses" || w == "breakers":
			is = true
		case w != "box" && w != "block" && w != "panel" && w != "board" && w != "holder" && w != "way" && w != "position" && w != "slot" &&
			w != "no" && w != "boite" && w != "a" && w != "caja" && w != "de" && w != "scatola" && w != "porta" && w != "kast" && w != "nr":
			return false
		}
	}
	return is
}
