package block

import (
	"slices"

	"contralay/model/wirelist/plugwires"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// ColoursOf takes in a table of colours, of which a column says the names and one where they go, −1 for none.
func ColoursOf(b *Block, signal, to int) (of plugwires.Colours) {
	text := func(r table.Row, i int) string {
		if i < 0 || i >= len(r.Cells) {
			return ""
		}
		return r.Cells[i]
	}
	for _, r := range b.Rows {
		if shape.IsText(r) {
			continue
		}
		of.Names = append(of.Names, text(r, signal))
		if text(r, to) != "" {
			of.Far++
		}
	}
	for _, r := range slices.Concat(b.Path, b.Titles) {
		_, s := r.Filled()
		of.Said = of.Said || r.Level > 0 && plugwires.SaysWires(s)
		of.Counted = of.Counted || r.Level == 0 && plugwires.CountsPins(s, len(of.Names))
	}
	return of
}
