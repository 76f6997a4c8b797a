package block

import (
	"slices"

	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// lead makes the block of such lines.
func (f *finder) lead(rows []table.Row) {
	near, far := runline.LeadTitle(rows[0].Cells[0])
	b := Block{Table: f.t, Path: slices.Clone(f.path), Titles: append(f.titles(), rows[0]), Runs: true}
	for _, r := range rows[1:] {
		l, _ := runline.LeadOf(r.Cells[0])
		r.Cells, r.Prose, r.Point = []string{near, l.Pin, far, l.Far, l.Colour, l.Size, l.Note, l.Signal}, false, false
		if l.Else != "" {
			r.Cells[2] = l.Else
		}
		if l.Free {
			r.Cells[2], r.Cells[3] = "n/c", ""
		}
		b.Rows = append(b.Rows, r)
	}
	f.close()
	f.all = append(f.all, b)
}

// legLines is how many rows from one on are the heading of a splice and its legs.
func (f *finder) legLines(i int) (n int) {
	for i+n < len(f.t.Rows) {
		if l, is := f.legs[f.t.Rows[i+n].Line]; !is || (n == 0) != (l.Splice == "") {
			break
		}
		n++
	}
	return n
}
