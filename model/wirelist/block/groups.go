package block

import "contralay/model/wirelist/table"

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
		starts := repeats(f.h, &own, b.Head[0])
		if len(starts) < 2 {
			out = append(out, b)
			continue
		}
		for _, band := range cut(own, starts) {
			part := b
			part.Head, part.Rows = band.Rows[:1], band.Rows[1:]
			out = append(out, part)
		}
	}
	return out
}
