package point

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// Whoever draws up a plug that he did not make has the colours of its wires and nothing else: a point for each cavity, with a colour where
// others have the name of the wire.
//
//	## Plug 1 (grey, 6 way)
//	- 1: red
//	- 2: red/yellow
//	- 5: empty

const (
	leastColours = 4  // cavities that say so together (no source)
	mostColours  = 40 // that are looked at (no source)
)

// OnlyColours reports whether all cavities that a sheet tells, a point each, have the colour of a wire and nothing else, or are free. Red,
// green and blue are names of signals too: some wire has a stripe, or the sheet speaks of wires or colours.
func OnlyColours(rows []table.Row) bool {
	n, sure := 0, false
	for _, r := range rows {
		if n == mostColours {
			break
		}
		if len(r.Cells) != 1 {
			if filled, _ := r.Filled(); filled > 1 {
				return false // a table says what the wires are
			}
			continue
		}
		_, text, ok := Cut(r.Cells[0])
		switch {
		case r.Level > 0 || !ok || text == "" || !r.Point && !isSigned(r.Cells[0]):
			sure = sure || speaksOfColours(r.Cells[0])
		case name.StateOf(text) != name.Used:
		case !IsColour(text):
			return false
		default:
			n++
			c, _ := value.ParseColour(text, "")
			sure = sure || len(c) > 1
		}
	}
	return sure && n >= leastColours
}

// isSigned reports whether a line has a sign behind the cavity that it begins with, "1: red", "1 - red", "1 = red".
func isSigned(text string) bool {
	first, rest, _ := strings.Cut(strings.TrimSpace(text), " ")
	return strings.HasSuffix(first, ":") || strings.HasPrefix(rest, "- ") || strings.HasPrefix(rest, "– ") ||
		strings.HasPrefix(rest, "= ") || strings.HasPrefix(rest, ": ") || SaysPin(text)
}

// speaksOfColours reports whether a text has a word for wires or for their colours.
func speaksOfColours(text string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(text)), func(w string) bool {
		switch w {
		case "colour", "colours", "color", "colors", "coloured", "farbe", "farben", "couleur", "couleurs", "colori", "colore", "colores",
			"kleur", "kleuren", "farg", "farger", "farver", "barva", "barvy", "kolor", "kolory", "cor", "cores", "varit", "vari":
			return true
		}
		return words.IsWireWord(w)
	})
}
