package partmark

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
	"contralay/model/wirelist/value"
)

// gapped are the lines that blanks or tabs have parted in columns, marks for what is as above written out.
//
//	R-1   lamp 1   LP1-A   14   red
//	R-2   lamp 2   LP2-A   "    "
//	R-3   beacon   BC1-2   16   orange
func gapped(rows []table.Row) (all []toldcells.Line) {
	const cells = 3 // of a line that says more than a title (no source)
	dittos := 0
	var above []string
	for i, r := range rows {
		n, _ := r.Filled()
		if n < cells || r.Level > 0 || r.Struck || slices.ContainsFunc(r.Cells, isSentence) {
			if n > 0 {
				above = nil
			}
			continue
		}
		line := slices.Clone(r.Cells)
		for k, c := range line {
			if value.IsDitto(c) && k < len(above) {
				line[k] = above[k]
				dittos++
			}
		}
		above = line
		all = append(all, toldcells.Line{Row: i, Cells: line})
	}
	if dittos == 0 {
		return nil // other readers know them
	}
	return all
}

// isSentence reports whether a cell is longer than those of a table without headings.
func isSentence(c string) bool {
	const most = 8 // words (no source)
	return len(strings.Fields(c)) > most || strings.Contains(c, ". ")
}
