package partmark

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
	"contralay/model/wirelist/value"
)

// gapped are the lines that blanks, tabs or semicolons have parted in columns, marks for what is as above written out. dittos says that
// there are such marks: other readers know most such lines without them.
//
//	R-1   lamp 1   LP1-A   14   red
//	R-2   lamp 2   LP2-A   "    "
//	R-3   beacon   BC1-2   16   orange
func gapped(rows []table.Row) (all []toldcells.Line, dittos bool) {
	const cells = 3 // of a line that says more than a title (no source)
	var above []string
	for i, r := range rows {
		n, _ := r.Filled()
		free := n == 2 && above != nil && name.StateOf(r.Cells[len(r.Cells)-1]) != name.Used
		if n < cells && !free || r.Level > 0 || r.Struck || slices.ContainsFunc(r.Cells, isSentence) {
			if n > 0 {
				above = nil
			}
			continue
		}
		line := slices.Clone(r.Cells)
		for k, c := range line {
			if value.IsDitto(c) && k < len(above) {
				line[k], dittos = above[k], true
			}
		}
		above = line
		all = append(all, toldcells.Line{Row: i, Cells: line})
	}
	return all, dittos
}

// allPlain reports whether lines without such marks are the cavities of a plug, each cell of them told: its colour, its size, its name.
//
//	1 ; ge ; Blinker li ; 1,5
//	2 ; bl ; Nebel ; 1,5
//	8 ; frei
func allPlain(told toldcells.Told, rows []table.Row) bool {
	of := map[int]bool{}
	for _, w := range told.Wires {
		if of[w.Row] = true; w.Pin == "" || w.From+w.To+w.Note != "" || !w.Free && (w.Colour == "" || w.Size == "" || w.Signal == "") {
			return false
		}
	}
	for i, r := range rows[told.Wires[0].Row:] {
		if n, _ := r.Filled(); n > 1 && !of[i+told.Wires[0].Row] && !isText(r) {
			return false // a table of something else
		}
	}
	return true
}

// isText reports whether a row is a sentence that its commas parted.
func isText(r table.Row) bool { return len(strings.Fields(toldcells.Text(r.Cells))) > 2*len(r.Cells) }

// isSentence reports whether a cell is longer than those of a table without headings.
func isSentence(c string) bool {
	const most = 8 // words (no source)
	return len(strings.Fields(c)) > most || strings.Contains(c, ". ")
}
