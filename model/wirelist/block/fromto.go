package block

import (
	"slices"

	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// listFromTo makes the block of lines that say in words from where to where a wire goes.
func (f *finder) listFromTo(rows []table.Row, lines []runline.FromTo) {
	b := Block{Table: f.t, Path: slices.Clone(f.path), Titles: f.titles(), Runs: true}
	for i, r := range rows {
		l := lines[i]
		if l.NearPad == "" {
			l.Near, l.NearPad = f.pad(l.Near)
		}
		if l.FarPad == "" {
			l.Far, l.FarPad = f.pad(l.Far)
		}
		r.Cells = []string{l.Near, l.NearPad, l.Far, l.FarPad, l.Colour, l.Size, l.Note, l.Signal, l.ID}
		r.Prose, r.Point = false, false
		b.Rows = append(b.Rows, r)
	}
	runline.Lengths(b.Rows)
	f.close()
	f.all = append(f.all, b)
}
