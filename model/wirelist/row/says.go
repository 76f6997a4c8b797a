package row

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// What is said of a block before its rows are read.

// titlesOf gives the texts above a block, each as one; what is more than a text is no title.
func titlesOf(im *draft.Importer, b *shape.Block, here func(int) table.Place) (titles []table.Row) {
	for _, r := range b.Titles {
		if n, first := r.Filled(); n == 2 && (strings.HasSuffix(first, ":") || name.ConnectorName(first+": x") != first+": x") {
			r.Cells = []string{strings.Join(r.Cells, " ")} // "Connector:" and its name in two cells
		} else if (n > 1 && words.EndsInDesignator(first) || n == 2 && (titleline.Names(first) || countsWays(r.Cells))) &&
			!anotherNames(b.Titles, r.Line) {
			im.Say(report.Note, "above the table", here(r.Line), table.Tidy(strings.Join(r.Cells[1:], " ")), "left out")
			r.Cells = []string{first} // "Power module PM1 | club car | 31", "BH1 plug | cab to box"
		} else if n > 1 {
			im.Say(report.Note, "above the table", here(r.Line), table.Tidy(strings.Join(r.Cells, " ")), "left out")
			continue
		}
		r.Cells = []string{words.NamedPlug(table.Tidy(strings.Join(r.Cells, " ")))}
		if huekey.ReadColourKey(r.Cells[0]) != nil {
			continue // it is told as such
		}
		if r.Taken {
			im.Say(report.Note, "line of headings", here(r.Line), r.Cells[0], "the lines below it are read by what they say")
			continue
		}
		titles = append(titles, r)
	}
	return titles
}

// countsWays reports whether the last cell of a title begins with how many cavities the thing before it has: "Winch box | 8 way, pins in".
func countsWays(cells []string) bool {
	last := cells[len(cells)-1]
	if last == "" || !value.IsDigit(last[0]) {
		return false
	}
	w := strings.FieldsFunc(last, func(r rune) bool { return r == ' ' || r == '-' || r == ',' })
	if len(w) < 2 || strings.Trim(w[0], "0123456789") != "" {
		return false
	}
	word := table.Fold(w[1])
	return name.IsPinWord(word) || name.CountWord(word) == "cavities" || name.CountWord(word) == "contacts"
}

// anotherNames reports whether a text alone in its line, but for one of these lines, says connector.
func anotherNames(titles []table.Row, line int) bool {
	return slices.ContainsFunc(titles, func(o table.Row) bool {
		k, text := o.Filled()
		return k == 1 && o.Line != line && name.SaysConnector(text)
	})
}

// sayReading says what the cells of a block say against its headings, or in place of them.
func sayReading(im *draft.Importer, b *shape.Block, place table.Place) {
	if guessed := guessedHeads(b); guessed != "" {
		at := place
		at.Row = b.Head
		im.Doubt("headings that are not known", at, guessed, "taken for the ends by their cells; say what they mean if they are not",
			DataRows(b))
	}
	for _, c := range b.Cols {
		at := table.Place{File: place.File, Sheet: place.Sheet, Row: b.Head, Column: c.Head}
		switch {
		case c.Misspelt:
			im.Say(report.Note, "heading with a slip in it", at, c.Head, "taken as the "+string(c.Field))
		case c.Sizes:
			im.Say(report.Note, "column of wires holds sizes", at, c.Head, "taken as the size")
		case c.Against:
			im.Say(report.Warn, "heading against its cells", at, c.Head, "taken as the "+string(c.Field))
		case c.Field == name.FieldContact:
			im.Say(report.Note, "sizes of contacts", at, c.Head, "no sizes of wire; kept in the notes")
		case c.Field == name.FieldVia:
			im.Say(report.Note, "cavities between two ends", at, c.Head, "a wire on either side of each, both in the one cavity")
		case c.Group:
			im.Say(report.Note, "cavities that come again", at, c.Head, "taken as the part of the connector that they are in")
		}
	}
	if b.Units > 0 {
		at := place
		at.Row = b.Units
		im.Say(report.Note, "units below the headings", at, "", "taken for the columns")
	}
}

// sayColumns says which columns are kept as text, and how whole numbers are read.
func sayColumns(im *draft.Importer, b *shape.Block, place table.Place) {
	for _, c := range b.Cols {
		at := table.Place{File: place.File, Sheet: place.Sheet, Row: b.Head, Column: c.Head}
		if c.Field == name.FieldKeep && c.Head != "" {
			im.Rep.Kept[c.Head] = true
		}
		if c.CoreSize {
			im.Say(report.Note, "kinds of cables that say the size of their cores", at, c.Head, "taken for the rows that say none")
			continue
		}
		if c.Alias {
			im.Say(report.Note, "another name of the cavities", at, c.Head, "kept in the notes")
		} else if c.Spared {
			im.Say(report.Note, "column that no wire takes", at, c.Head, "kept in the notes")
		} else if c.Field == name.FieldKeep && c.Head != "" {
			im.Say(report.Note, "column not understood", at, c.Head, "kept in the notes")
		}
		switch {
		case c.Said || c.Section || c.Bare != value.BareMM2 || !c.Whole:
		case c.Elsewhere:
			im.Doubt("whole numbers taken as mm²", at, c.Head, "other tables of the sheet have mm²; this one does not say", DataRows(b))
		default:
			im.Say(report.Note, "whole numbers taken as mm²", at, c.Head, "others of the column have decimals")
		}
	}
}

// guessedHeads are the headings of the columns that their cells alone give a meaning.
func guessedHeads(b *shape.Block) string {
	var heads []string
	for _, c := range b.Cols {
		if c.Guessed {
			heads = append(heads, c.Head)
		}
	}
	return strings.Join(heads, " | ")
}
