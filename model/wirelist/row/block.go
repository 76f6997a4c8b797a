package row

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Read reads the rows of one block.
func Read(im *draft.Importer, b *shape.Block, only bool) {
	place := table.Place{File: b.Table.File, Sheet: b.Table.Sheet}
	here := func(row int) table.Place { p := place; p.Row = row; return p }
	for _, c := range b.Cols {
		if c.Sizes {
			im.Say(report.Note, "column of wires holds sizes",
				table.Place{File: place.File, Sheet: place.Sheet, Row: b.Head, Column: c.Head}, c.Head, "taken as the size")
		}
	}
	if b.Units > 0 {
		im.Say(report.Note, "units below the headings", here(b.Units), "", "taken for the columns")
	}
	b.PartRuns()
	b.WithoutZeros()
	pinTable := b.IsPinTable()
	settleBareSizes(b, im)
	b.SettleRanges()

	if len(b.Rows) > 0 && pinTable && !b.Has(name.FieldConnector) {
		// The name of the first connector may stand below the headings, as the others do.
		if _, first := b.Rows[0].Filled(); shape.IsText(b.Rows[0]) && !shape.IsSignOff(b.Rows[0]) &&
			(name.SaysConnector(first) || b.StartsAgain()) {
			b.Titles, b.Rows = append(b.Titles, b.Rows[0]), b.Rows[1:]
		}
	}
	var t *draft.Term
	var titles []table.Row
	for _, r := range b.Titles {
		if n, first := r.Filled(); n == 2 && (strings.HasSuffix(first, ":") || name.ConnectorName(first+": x") != first+": x") {
			r.Cells = []string{strings.Join(r.Cells, " ")} // "Connector:" and its name in two cells
		} else if n > 1 {
			im.Say(report.Note, "above the table", here(r.Line), table.Tidy(strings.Join(r.Cells, " ")), "left out")
			continue
		}
		r.Cells = []string{table.Tidy(strings.Join(r.Cells, " "))}
		titles = append(titles, r)
	}
	if pinTable && !b.InCells() || b.Has(name.FieldVia) {
		t = connectorOf(im, b, titles, only)
	} else {
		for _, r := range titles {
			_, text := r.Filled()
			im.Say(report.Note, "above the table", here(r.Line), text, "left out")
		}
	}
	for _, c := range b.Cols {
		if c.Field == name.FieldKeep && c.Head != "" {
			im.Rep.Kept[c.Head] = true
		}
		if c.Spared {
			im.Say(report.Note, "column that no wire takes", table.Place{File: place.File, Sheet: place.Sheet, Row: b.Head, Column: c.Head},
				c.Head, "kept in the notes")
		} else if c.Field == name.FieldKeep && c.Head != "" {
			im.Say(report.Note, "column not understood", table.Place{File: place.File, Sheet: place.Sheet, Row: b.Head, Column: c.Head},
				c.Head, "kept in the notes")
		}
		if c.Field == name.FieldGauge && !c.Said && !c.Section && c.Bare == value.BareMM2 && c.Whole {
			im.Say(report.Note, "whole numbers taken as mm²",
				table.Place{File: place.File, Sheet: place.Sheet, Row: b.Head, Column: c.Head}, c.Head,
				"others of the column have decimals")
		}
	}
	for _, c := range b.Cols {
		at := table.Place{File: place.File, Sheet: place.Sheet, Row: b.Head, Column: c.Head}
		switch {
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
	columnsTwice(b, im, here(b.Head))
	columnsGiven(im, b, pinTable)
	var above []string
	connector := ""
	last := b.LastData()
	changes := false // the rows are those of a table of changes
	for i, r := range b.Rows {
		_, first := r.Filled()
		changes = changes || shape.IsRevisionHead(r)
		switch {
		case changes || shape.IsSignOff(r):
			im.Say(report.Note, "about the paper", here(r.Line), shape.RowText(r.Cells), "left out")
			continue
		case name.IsTotal(first):
			checkTotal(im, b, r)
			continue
		case shape.IsText(r):
			if c, ok := name.ReadCount(first); ok && t != nil {
				c.Row = r.Line
				t.Counts = append(t.Counts, c)
			} else if t != nil && i < last && namesConnector(b, first, i, t) {
				t = connectorOf(im, b, []table.Row{r}, false)
			} else if i < last {
				im.Say(report.Note, "remark between the rows", here(r.Line), first, "left out")
			} else {
				im.Say(report.Note, "below the table", here(r.Line), first, "left out")
			}
			continue
		}
		if b.Deleted(r.Cells) {
			im.Say(report.Warn, "row marked as deleted", here(r.Line), shape.RowText(r.Cells), "left out")
			continue
		}
		cells := ditto(im, r, above, here(r.Line))
		cells, notes := withoutFormulas(im, b, cells, here(r.Line))
		cells, notes = withoutStruck(im, b, cells, notes, here(r.Line))
		above = cells
		owner := t
		if pinTable && b.Has(name.FieldConnector) {
			named := b.Cell(cells, name.FieldConnector)
			if named == "" && connector != "" {
				im.Say(report.Note, "connector not repeated", here(r.Line), connector, "taken from the row above")
				named = connector
			}
			if connector = named; named != "" {
				owner = im.Named(value.JoinNonEmpty(" ", b.Prefix, named), here(r.Line), true)
			}
		}
		readRow(im, b, cells, notes, owner, here(r.Line))
	}
}
