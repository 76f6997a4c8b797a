package block

import (
	"slices"

	"contralay/model/wirelist/grid"
	"contralay/model/wirelist/table"
)

// parted makes two tables of one of Markdown whose headings come again, each with the titles above it: the pins of a ribbon
// are written in two columns.
//
//	| Pin | Signal | Pin | Signal |
//	| 1   | ROW0   | 2   | ROW1   |
func (f *finder) parted(all []Block) (out []Block) {
	for _, b := range all {
		if !f.t.Marked || len(b.Head) != 1 {
			out = append(out, b)
			continue
		}
		own := table.Table{Rows: append(append([]table.Row{}, b.Head...), b.Rows...)}
		starts := grid.Repeats(f.h, &own, b.Head[0])
		if len(starts) < 2 {
			out = append(out, b)
			continue
		}
		for _, band := range grid.Cut(own, starts) {
			part := b
			part.Head, part.Rows = band.Rows[:1], band.Rows[1:]
			out = append(out, part)
		}
	}
	return out
}

// halfOf reports whether a table without a title is the other half of the one to its left: its headings are the same, and no
// row begins with what a row there begins with.
func (b *Block) halfOf(left *Block) bool {
	if len(b.Titles) > 0 || len(left.Titles) == 0 || len(b.Head) != 1 || len(left.Head) != 1 {
		return false
	}
	first := func(r table.Row) string { _, cell := r.Filled(); return cell }
	return !slices.ContainsFunc(b.Rows, func(r table.Row) bool {
		return slices.ContainsFunc(left.Rows, func(o table.Row) bool { return first(o) == first(r) })
	})
}
