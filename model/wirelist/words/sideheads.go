package words

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// IsUnitHead reports whether a heading is of a column of units, behind one of values.
func IsUnitHead(head string) bool {
	switch strings.Join(name.Words(table.Fold(head)), " ") {
	case "unit", "units", "uom", "unit of measure", "einheit", "unite", "unidad", "unita", "u m", "um":
		return true
	}
	return false
}

// HeadsSide reports whether a heading is some words and one more, for what stands there: "Rig side" of "Rig".
func HeadsSide(head, of string) bool {
	w, first := name.Words(name.WithoutBrackets(table.Fold(head))), name.Words(table.Fold(of))
	if len(first) == 0 || len(w) != len(first)+1 || !slices.Equal(w[:len(first)], first) {
		return false
	}
	switch w[len(w)-1] {
	case "side", "end", "device", "devices", "item", "unit", "part", "component", "equipment", "thing", "box", "module", "board", "seite",
		"gerat", "ende", "cote", "appareil", "lado", "aparato", "lato", "zijde", "apparaat", "strona":
		return true
	}
	return false
}
