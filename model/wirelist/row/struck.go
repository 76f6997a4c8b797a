package row

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model/visible"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// StruckAndHidden says which rows of a table are struck out and which its workbook does not show.
func StruckAndHidden(im *draft.Importer, t *table.Table) {
	for _, r := range t.Rows {
		at := table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}
		switch {
		case r.Struck:
			im.Say(report.Warn, "row struck out", at, shape.RowText(r.Cells), "left out")
		case r.Hidden:
			im.Say(report.Note, "hidden row", at, "", "read like any other")
		}
	}
}

// SayOdd reports what was left out of cells because a terminal would obey it, or because it does
// not show, and in which code page a text was read.
func SayOdd(im *draft.Importer, t *table.Table) {
	if t.Guess != "" {
		im.Say(report.Note, "code page guessed from the letters", table.Place{File: t.File}, t.Guess, "save the list as UTF-8 to be sure")
	}
	if t.Program > 0 {
		im.Say(report.Note, "lines of a program", table.Place{File: t.File}, fmt.Sprint(t.Program),
			"left out; its comments are read")
	}
	for _, o := range t.Odd {
		at := table.Place{File: t.File, Sheet: t.Sheet, Row: o.Row}
		if o.Row > 0 {
			at.Column = table.ColumnLetter(o.Col)
		}
		im.Say(report.Note, report.Control, at, visible.Quoted(table.Short(o.Shown)), "left out of the cell")
	}
}

// withoutStruck leaves out what a cell strikes through, "~~4~~ 5". What is left counts, and
// what was struck out is reported; where nothing is left it stays in the note.
func withoutStruck(im *draft.Importer, b *shape.Block, cells, notes []string, place table.Place) ([]string, []string) {
	for i := range cells {
		for {
			front, rest, open := strings.Cut(cells[i], "~~")
			out, back, closed := strings.Cut(rest, "~~")
			if !open || !closed || out == "" {
				break
			}
			cells = slices.Clone(cells)
			cells[i] = table.Tidy(front + " " + back)
			where, did := place, "left out"
			where.Column = shape.At(b.Cols, i)
			if cells[i] == "" {
				did = "kept in the note"
				notes = append(notes, value.JoinNonEmpty(": ", where.Column, "struck out: "+out))
			}
			im.Say(report.Warn, "text struck out", where, fmt.Sprintf("%q", out), did)
		}
	}
	return cells, notes
}
