package saidonce

import (
	"cmp"
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// isData reports whether a line is a row of one of some tables that is no text: it says something of its own wires alone.
func isData(blocks []*shape.Block, line int) bool {
	return slices.ContainsFunc(blocks, func(b *shape.Block) bool {
		i, is := slices.BinarySearchFunc(b.Rows, line, func(r table.Row, line int) int { return cmp.Compare(r.Line, line) })
		return is && !shape.IsText(b.Rows[i])
	})
}

// lastLine is the line of the last row of some tables that is no text.
func lastLine(blocks []*shape.Block) (last int) {
	for _, b := range blocks {
		for _, r := range slices.Backward(b.Rows) {
			if !shape.IsText(r) {
				last = max(last, r.Line)
				break
			}
		}
	}
	return last
}

// saysWires reports whether a text has a word for wires.
func saysWires(text string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(text)), words.IsWireWord)
}
