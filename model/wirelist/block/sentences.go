package block

import (
	"slices"

	"contralay/model/wirelist/sentence"
	"contralay/model/wirelist/table"
)

// sentences is how many rows from one on tell a wire each in a sentence; 0 where none does, or the sheet has one such alone.
func (f *finder) sentences(i int) int {
	n := 0
	t := f.talk
	for _, r := range f.t.Rows[i:] {
		if n > 0 && r.Line > f.t.Rows[i+n-1].Line+2 || len(sentence.Wires(r, &t)) == 0 {
			break
		}
		n++
	}
	if n == 1 && !slices.ContainsFunc(f.all, func(b Block) bool { return b.Told }) && !f.tellsMore(i+1) {
		return 0
	}
	return n
}

// tellsMore reports whether a row below tells a wire, too.
func (f *finder) tellsMore(i int) bool {
	const far = 60 // rows that are looked at (no source)
	for _, r := range f.t.Rows[i:min(len(f.t.Rows), i+far)] {
		if t := f.talk; len(sentence.Wires(r, &t)) > 0 {
			return true
		}
	}
	return false
}

// tell makes the block of such sentences.
func (f *finder) tell(rows []table.Row) {
	b := Block{Table: f.t, Path: slices.Clone(f.path), Titles: f.titles(), Runs: true, Told: true}
	var all []sentence.Wire
	var of []table.Row
	for _, r := range rows {
		for _, w := range sentence.Wires(r, &f.talk) {
			all, of = append(all, w), append(of, r)
		}
	}
	sentence.Complete(all)
	for i, w := range all {
		one := of[i]
		one.Cells, one.Prose, one.Point = []string{w.Near, w.NearPad, w.Far, w.FarPad, w.Colour, "", w.Note, ""}, false, false
		b.Rows = append(b.Rows, one)
	}
	f.close()
	f.all = append(f.all, b)
}
