package table

import (
	"slices"
	"sort"
)

// merged is the cells of one column that a workbook shows as one: rows from the first, which
// has the text, to the last.
type merged struct{ col, first, last int }

// fill writes the text of cells that go over several rows into each of them: a gauge that
// stands once beside ten wires is the gauge of all. Rows without any text stay out, and so
// do cells that go over several columns, as titles do.
func (b *book) fill(t *Table, all []merged) {
	left := b.l.Cells // of what is filled; more would be no list
	for _, m := range all {
		at := sort.Search(len(t.Rows), func(i int) bool { return t.Rows[i].Line >= m.first })
		if at == len(t.Rows) || t.Rows[at].Line != m.first || m.col >= len(t.Rows[at].Cells) || t.Rows[at].Cells[m.col] == "" {
			continue
		}
		text := t.Rows[at].Cells[m.col]
		for i := at + 1; i < len(t.Rows) && t.Rows[i].Line <= m.last; i++ {
			if left--; left < 0 {
				return
			}
			r := &t.Rows[i]
			if m.col < len(r.Cells) && r.Cells[m.col] != "" {
				continue
			}
			r.Cells = slices.Clone(r.Cells) // rows that repeat share theirs
			for len(r.Cells) <= m.col {
				r.Cells = append(r.Cells, "")
			}
			r.Cells[m.col] = text
		}
	}
}

// mostMerged is how many merged ranges of a sheet are looked at (no source).
const mostMerged = 20_000
