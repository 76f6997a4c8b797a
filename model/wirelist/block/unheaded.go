package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// unheaded makes a block of its own of rows of data that stand above the headings of another table and have none, and gives the
// texts that are left for the title of that one.
//
//	1 | Up   | red
//	2 | Down | blue
//
//	Pin | Name | Colour
//	1   | Stop | green
func (f *finder) unheaded(titles []table.Row) []table.Row {
	first, last, n := -1, -1, 0
	for i, r := range titles {
		if k, _ := r.Filled(); k > 2 && slices.ContainsFunc(r.Cells, func(c string) bool { return strings.ContainsAny(c, "0123456789") }) {
			if first < 0 {
				first = i
			}
			last = i
			n++
		}
	}
	if n < 3 { // fewer are a caption in several cells (no source)
		return titles
	}
	f.all = append(f.all, Block{Table: f.t, Path: slices.Clone(f.path), Titles: slices.Clone(titles[:first]),
		Rows: slices.Clone(titles[first : last+1])})
	return titles[last+1:]
}
