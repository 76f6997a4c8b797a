package tail

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Below a list often stands what is still to be bought for it, how much of it first.
//
//	Wire | From  | To   | mm² | Colour
//	1    | Panel | Lamp | 1   | red
//
//	To buy
//	3 m  | 1 mm² red
//	10 pcs | ring terminals

// BeginsWithAmount reports whether a row begins with how much there is of something, and the column has no lengths: a wire of a list that
// begins with its length is one.
func BeginsWithAmount(cols []shape.Column, r table.Row) bool {
	at := slices.IndexFunc(r.Cells, func(c string) bool { return c != "" })
	n, _ := r.Filled()
	return at >= 0 && at < len(cols) && n > 1 && cols[at].Field != name.FieldLength && isAmount(r.Cells[at])
}

// IsPieces reports whether a text counts pieces, "6 pcs".
func IsPieces(text string) bool {
	return isAmount(text) && value.LengthWord(strings.TrimSpace(strings.TrimLeft(text, "0123456789.,½ "))) == ""
}

// isAmount reports whether a text is a number and what it counts, a length or pieces: "3 m", "10 St", "2 pcs", "4x".
func isAmount(text string) bool {
	text = strings.TrimSpace(text)
	unit := strings.TrimLeft(text, "0123456789.,½")
	if unit == text || unit == "" {
		return false
	}
	unit = strings.TrimRight(table.Fold(strings.TrimSpace(unit)), ".")
	switch unit {
	case "x", "st", "stk", "stck", "stuck", "pcs", "pc", "pce", "piece", "pieces", "off", "ea", "each", "roll", "rolls", "rolle", "rollen",
		"spool", "bag", "box", "pack", "packs", "pkg", "beutel", "pz", "pezzi", "pza", "pzas", "uds", "ud", "szt", "ks", "set",
		"sets", "pair", "pairs", "paar", "lot", "rouleau", "rollo", "rotolo":
		return true
	}
	return value.LengthWord(unit) != ""
}
