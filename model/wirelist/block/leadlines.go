package block

import (
	"slices"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// leadLines is how many rows from one on are the title of a lead and its lines: two or more of them say both cavities, and half of those
// that are not free do.
func (f *finder) leadLines(i int) int {
	rows := f.t.Rows
	if len(rows[i].Cells) != 1 || i+2 >= len(rows) {
		return 0
	}
	if near, _ := runline.LeadTitle(rows[i].Cells[0]); near == "" {
		return 0
	}
	n, both, free, seen := 1, 0, 0, map[string]bool{}
	for i+n < len(rows) && len(rows[i+n].Cells) == 1 && rows[i+n].Level == 0 && rows[i+n].Line <= rows[i+n-1].Line+2 {
		l, ok := runline.LeadOf(rows[i+n].Cells[0])
		if !ok || l.Pin != "" && seen[l.Pin] {
			break
		}
		if seen[l.Pin] = true; !l.Free && l.Else == "" {
			both++
		}
		if l.Free {
			free++
		}
		n++
	}
	if i+n < len(rows) && len(rows[i+n].Cells) == 1 && rows[i+n].Line == rows[i+n-1].Line+1 {
		if _, to := arrow.In(rows[i+n].Cells[0]); to > 0 {
			return 0 // pads of two boards, of which some look like cavities
		}
	}
	if both < 2 || 2*both < n-1-free {
		return 0
	}
	return n
}

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
