package saidonce

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// lines are those of a sheet that are rows of its tables, which say something of their own wires alone.
type lines struct {
	has  map[int]bool
	last int
}

// linesOf are the lines of the rows of some tables that are no text.
func linesOf(blocks []*shape.Block) lines {
	l := lines{has: map[int]bool{}}
	for _, b := range blocks {
		for _, r := range b.Rows {
			if !shape.IsText(r) {
				l.has[r.Line], l.last = true, max(l.last, r.Line)
			}
		}
	}
	return l
}

// saysWires reports whether a text has a word for wires.
func saysWires(text string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(text)), words.IsWireWord)
}
