package farcolumn

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/doingword"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
)

// fittingsOfEnd takes the meaning of far ends off a column that is headed by an end, where each of its cells is what is put on that end of
// the wire and names no place: "ring" is no device.
//
//	Pin | Signal | Colour | Lamp end
//	1   | feed   | red    | ring terminal
//	2   | earth  | black  | ferrule
func fittingsOfEnd(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	for i := range prof {
		c := &cols[i]
		w := headWords(c.Head)
		if c.Given || c.Field != name.FieldTo || prof[i].Filled < 2 || len(w) < 2 || !sidehead.IsEndWord(w[len(w)-1]) {
			continue
		}
		if cells(rows, i, isFitting) {
			c.Field = name.FieldKeep
			c.Know()
		}
	}
}

// isFitting reports whether a cell is something that is put on the end of a wire, and names no place behind it: "Eyelet on motor post 1".
func isFitting(cell string) bool {
	const most = 3 // words (no source)
	w := strings.Fields(table.Fold(cell))
	return len(w) <= most && (isOnEnd(cell) || sidehead.IsFitting(table.Fold(cell))) && !slices.ContainsFunc(w, func(w string) bool {
		return slices.Contains([]string{"on", "at", "to", "of", "an", "am", "auf", "sur", "en", "su", "op"}, w)
	})
}

// isOnEnd reports whether a cell says what is done with the end of a wire, or what is put on it. Common words, from memory, no source.
func isOnEnd(cell string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(cell)), func(w string) bool {
		return doingword.Says(w) || slices.Contains([]string{"ring", "rings", "eyelet", "spade", "blade", "fork", "bullet", "butt", "bare",
			"tinned", "stripped", "soldered", "crimped", "male", "female", "socket", "lugs", "ose", "kabelschuh", "flachstecker",
			"verzinnt", "abisoliert", "cosses"}, w)
	})
}
