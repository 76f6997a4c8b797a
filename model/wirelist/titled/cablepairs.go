package titled

import (
	"slices"
	"strings"

	"contralay/model/wirelist/cableheads"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// cablePairs makes one text of the cells above a table that say of a cable what it is: a word for a cable and its name, and words with what
// they say behind it or in the rows below. They are the heading of that cable; it stands in row at, which says the kind;
// taken is how many rows it is made of, 0 where there is none.
//
//	Cable | W31 | Type | 3 x 0.34 mm² | Length | 14 m
//
//	Cable: | W41
//	Type:  | LiYY 2x0.5
func cablePairs(h shape.Headings, rows []table.Row) (text string, at, taken int) {
	const most = 6 // rows (no source)
	if n, first := rows[0].Filled(); n < 2 || n%2 > 0 || !cableheads.IsWord(withoutColon(first)) {
		return "", 0, 0 // most rows
	}
	var pieces []string
	for k := 0; k < min(len(rows), most); k++ {
		filled := slices.DeleteFunc(slices.Clone(rows[k].Cells), func(c string) bool { return c == "" })
		if len(filled) == 0 || len(filled)%2 > 0 ||
			k > 0 && (len(filled) != 2 || rows[k].Line > rows[k-1].Line+1 || h.IsHead(rows[k])) {
			break
		}
		for i := 0; i < len(filled); i += 2 {
			key := withoutColon(filled[i])
			switch {
			case k == 0 && i == 0:
				if !name.IsDesignator(filled[1]) {
					return "", 0, 0
				}
				pieces = append(pieces, key+" "+filled[1])
			case !isCableKey(key):
				return "", 0, 0
			case isKindKey(key):
				pieces = append(pieces, filled[i+1])
				if cableheads.Names(pieces[0] + ": " + filled[i+1]) {
					at = k
				}
			default:
				pieces = append(pieces, key+" "+filled[i+1])
			}
		}
		taken = k + 1
	}
	if len(pieces) < 2 || taken >= len(rows) || !h.IsHead(rows[taken]) {
		return "", 0, 0
	}
	text = pieces[0] + ": " + strings.Join(pieces[1:], ", ")
	if !cableheads.Names(text) {
		return "", 0, 0
	}
	return text, at, taken
}

func withoutColon(c string) string { return strings.TrimRight(strings.TrimSpace(c), ":.# ") }

// isKindKey reports whether a word heads what a cable is, or its length: what follows says so itself.
func isKindKey(word string) bool {
	switch table.Fold(word) {
	case "type", "kind", "length", "make-up", "cores", "size", "cable type", "construction", "typ", "art", "kabeltyp", "aufbau", "lange",
		"laenge", "longueur", "section", "tipo", "lunghezza", "formazione", "longitud", "seccion", "lengte", "soort", "langd", "laengde",
		"dlugosc", "pituus", "tyyppi":
		return true // from memory, no source
	}
	return false
}

// isCableKey reports whether a word heads something that is said of a cable.
func isCableKey(word string) bool {
	if isKindKey(word) {
		return true
	}
	switch table.Fold(word) {
	case "screen", "shield", "jacket", "sheath", "colour", "color", "from", "to", "route", "part", "part no", "part number", "maker",
		"note", "remark", "od", "diameter", "name", "use", "function",
		"remarks", "schirm", "mantel", "farbe", "von", "nach",
		"bemerkung", "ecran", "gaine", "couleur", "de", "vers", "schermo", "guaina", "colore", "nota", "pantalla", "scherm",
		"opmerking":
		return true // from memory, no source
	}
	return false
}
