package wirelist

import (
	"fmt"
	"slices"
	"strings"
)

// standing is a table without the rows that its workbook strikes out.
func standing(t Table) Table {
	if slices.ContainsFunc(t.Rows, func(r Row) bool { return r.Struck }) {
		t.Rows = slices.DeleteFunc(slices.Clone(t.Rows), func(r Row) bool { return r.Struck })
	}
	return t
}

// looks says which rows of a table are struck out and which its workbook does not show.
func (im *importer) looks(t *Table) {
	for _, r := range t.Rows {
		at := Place{File: t.File, Sheet: t.Sheet, Row: r.Line}
		switch {
		case r.Struck:
			im.say(Warn, "row struck out", at, rowText(r.Cells), "left out")
		case r.Hidden:
			im.say(Note, "hidden row", at, "", "read like any other")
		}
	}
}

// withoutStruck leaves out what a cell strikes through, "~~4~~ 5". What is left counts, and
// what was struck out is reported; where nothing is left it stays in the note.
func (im *importer) withoutStruck(b *block, cells, notes []string, place Place) ([]string, []string) {
	for i := range cells {
		for {
			front, rest, open := strings.Cut(cells[i], "~~")
			out, back, closed := strings.Cut(rest, "~~")
			if !open || !closed || out == "" {
				break
			}
			cells = slices.Clone(cells)
			cells[i] = tidy(front + " " + back)
			where, did := place, "left out"
			where.Column = at(b.cols, i)
			if cells[i] == "" {
				did = "kept in the note"
				notes = append(notes, joinNonEmpty(": ", where.Column, "struck out: "+out))
			}
			im.say(Warn, "text struck out", where, fmt.Sprintf("%q", out), did)
		}
	}
	return cells, notes
}

// rowText is a row for a message.
func rowText(cells []string) string {
	return tidy(strings.Join(slices.DeleteFunc(slices.Clone(cells), func(c string) bool { return c == "" }), " "))
}

// isDeleted: a cell that says its row is not to be built: "DELETED", "deleted rev C",
// "obsolete", "entfällt". "Removed" alone, as it is also said of sleeves and seals.
func isDeleted(cell string) bool {
	f := strings.Trim(fold(cell), " .:!*()[]")
	if strings.Contains(f, " if ") || strings.Contains(f, " unless ") {
		return false // somebody is to decide
	}
	word, _, _ := cutWord(f)
	switch word {
	case "deleted", "delete", "cancelled", "canceled", "obsolete", "superseded", "entfallt", "entfallen", "gestrichen", "geloscht", "supprime", "supprimee", "annule", "annulee", "eliminado", "eliminada", "anulado", "eliminato", "eliminata", "annullato":
		return true
	}
	return f == "removed" || strings.HasPrefix(f, "removed rev") || strings.HasPrefix(f, "removed in rev") || f == "del"
}
