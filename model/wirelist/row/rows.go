package row

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/wirelist/draft"
	wirelistname "contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// Block reads the rows of one block.
func Block(im *draft.Importer, b *shape.Block, only bool) {
	place := value.Place{File: b.Table.File, Sheet: b.Table.Sheet}
	here := func(row int) value.Place { p := place; p.Row = row; return p }
	for _, c := range b.Cols {
		if c.Sizes {
			im.Say(report.Note, "column of wires holds sizes",
				value.Place{File: place.File, Sheet: place.Sheet, Row: b.Head, Column: c.Head}, c.Head, "taken as the size")
		}
	}
	b.PartRuns()
	b.WithoutZeros()
	ends := b.Has(wirelistname.FieldFrom, wirelistname.FieldTo, wirelistname.FieldFromPin)
	pinTable := b.IsPinTable()
	SettleBare(b, im)
	b.SettleRanges()

	if len(b.Rows) > 0 && pinTable && !b.Has(wirelistname.FieldConnector) {
		// The name of the first connector may stand below the headings, as the others do.
		if _, first := b.Rows[0].Filled(); shape.IsText(b.Rows[0]) && !shape.IsSignOff(b.Rows[0]) &&
			(wirelistname.SaysConnector(first) || b.StartsAgain()) {
			b.Titles, b.Rows = append(b.Titles, b.Rows[0]), b.Rows[1:]
		}
	}
	var t *draft.Term
	var titles []value.Row
	for _, r := range b.Titles {
		if n, first := r.Filled(); n == 2 && (strings.HasSuffix(first, ":") || wirelistname.ConnectorName(first+": x") != first+": x") {
			r.Cells = []string{strings.Join(r.Cells, " ")} // "Connector:" and its name in two cells
		} else if n > 1 {
			im.Say(report.Note, "above the table", here(r.Line), value.Tidy(strings.Join(r.Cells, " ")), "left out")
			continue
		}
		r.Cells = []string{value.Tidy(strings.Join(r.Cells, " "))}
		titles = append(titles, r)
	}
	if pinTable {
		t = Connector(im, b, titles, only)
	} else {
		for _, r := range titles {
			_, text := r.Filled()
			im.Say(report.Note, "above the table", here(r.Line), text, "left out")
		}
	}
	if !pinTable && !ends && !b.Has(wirelistname.FieldWire) {
		im.Say(report.Warn, "columns name neither a cavity nor ends", here(b.Head), "", "left out")
		return
	}
	for _, c := range b.Cols {
		if c.Spared {
			im.Say(report.Note, "column that no wire takes", value.Place{File: place.File, Sheet: place.Sheet, Row: b.Head, Column: c.Head},
				c.Head, "kept in the notes")
		} else if c.Field == wirelistname.FieldKeep && c.Head != "" {
			im.Say(report.Note, "column not understood", value.Place{File: place.File, Sheet: place.Sheet, Row: b.Head, Column: c.Head},
				c.Head, "kept in the notes")
		}
		if c.Field == wirelistname.FieldGauge && !c.Said && !c.Section && c.Bare == value.BareMM2 && c.Whole {
			im.Say(report.Note, "whole numbers taken as mm²",
				value.Place{File: place.File, Sheet: place.Sheet, Row: b.Head, Column: c.Head}, c.Head,
				"others of the column have decimals")
		}
	}
	Twice(b, im, here(b.Head))
	States(im, b, pinTable)
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
		case wirelistname.IsTotal(first):
			Total(im, b, r)
			continue
		case shape.IsText(r):
			if c, ok := wirelistname.ReadCount(first); ok && t != nil {
				c.Row = r.Line
				t.Counts = append(t.Counts, c)
			} else if t != nil && i < last && NamesConnector(b, first, i, t) {
				t = Connector(im, b, []value.Row{r}, false)
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
		cells := Ditto(im, r, above, here(r.Line))
		cells, notes := WithoutFormulas(im, b, cells, here(r.Line))
		cells, notes = WithoutStruck(im, b, cells, notes, here(r.Line))
		above = cells
		owner := t
		if pinTable && b.Has(wirelistname.FieldConnector) {
			name := b.Cell(cells, wirelistname.FieldConnector)
			if name == "" && connector != "" {
				im.Say(report.Note, "connector not repeated", here(r.Line), connector, "taken from the row above")
				name = connector
			}
			if connector = name; name != "" {
				owner = im.Named(name, here(r.Line), true)
			}
		}
		Row(im, b, cells, notes, owner, here(r.Line))
	}
}

// States notes what a block has a place for.
func States(im *draft.Importer, b *shape.Block, pinTable bool) {
	all := map[wirelistname.Field]string{wirelistname.FieldWire: "id", wirelistname.FieldSignal: "signal", wirelistname.FieldGauge: "size",
		wirelistname.FieldSpec: "specification", wirelistname.FieldColour: "colour", wirelistname.FieldCurrent: "current",
		wirelistname.FieldFuse: "fuse", wirelistname.FieldLength: "length", wirelistname.FieldCable: "unit"}
	for _, c := range b.Cols {
		if what := all[c.Field]; what != "" {
			im.Rep.States[what] = true
		}
	}
	if pinTable {
		im.Rep.States["reserved"] = true // each cavity has a row
	}
}

// NamesConnector: a row of one text between the rows of a pin table starts the next
// connector where it says so, where it begins with a designator, and where the cavities
// begin anew behind it.
func NamesConnector(b *shape.Block, text string, i int, t *draft.Term) bool {
	if wirelistname.SaysConnector(text) {
		return true
	}
	for _, r := range b.Rows[i+1:] {
		if shape.IsText(r) {
			continue
		}
		pin := b.Cell(r.Cells, wirelistname.FieldPin)
		_, named := t.At[pin]
		return pin != "" && named
	}
	return false
}

// Connector makes the termination of a pin table; nil where each row names its own.
func Connector(im *draft.Importer, b *shape.Block, titles []value.Row, only bool) *draft.Term {
	info := wirelistname.ReadTitle(titles, im.Cat)
	row := info.Row
	if row == 0 {
		row = b.Head
	}
	place := value.Place{File: b.Table.File, Sheet: b.Table.Sheet, Row: row}
	if b.Has(wirelistname.FieldConnector) {
		for _, text := range append(info.Other, info.Name) {
			if text != "" {
				im.Say(report.Note, "above the table", place, text, "left out")
			}
		}
		return nil
	}
	if info.Paper != "" && !im.H.Head.Name.Set {
		im.H.Head.Name = model.Some(info.Paper)
		im.Say(report.Note, "heading of the whole list", value.Place{File: place.File, Sheet: place.Sheet}, info.Paper,
			"taken as the name of the harness")
	} else if info.Paper != "" && info.Paper != im.H.Head.Name.V {
		im.Say(report.Note, "above the table", place, info.Paper, "left out")
	}
	name := info.Name
	switch {
	case name != "":
	case im.Opt.Recipe != nil && im.Opt.Recipe.Connector != "":
		name = im.Opt.Recipe.Connector
	case b.Table.Sheet != "" && only && !wirelistname.PlainSheet(b.Table.Sheet):
		name = b.Table.Sheet
	case only:
		name = wirelistname.BaseName(b.Table.File)
	default:
		name = fmt.Sprintf("Connector %d", len(im.Terms)+1)
		im.Say(report.Warn, "no heading names the connector", place, "", "called by a number")
	}
	if n, first := im.ByKey[wirelistname.Key(name)], place; n != nil && n.Titled {
		im.Say(report.Note, "second table of one connector", first, name, "read as one connector")
	}
	t := im.Named(name, place, true)
	if info.Insert != "" && !t.Insert.Set {
		t.Insert = model.Some(info.Insert)
	}
	if info.Unknown != "" {
		info.Other = append(info.Other, "insert "+info.Unknown)
		im.Say(report.Warn, "unknown insert", place, info.Unknown, "its cavities are those of the table")
	}
	if info.Gender != "" && !t.Gender.Set {
		t.Gender = model.Some(model.Gender(info.Gender))
	}
	if len(info.Other) > 0 && !t.Device.Set {
		t.Device = model.Some(strings.Join(info.Other, ", "))
	}
	t.Counts = append(t.Counts, info.Counts...)
	return t
}

// Ditto fills in marks that say "as above".
func Ditto(im *draft.Importer, r value.Row, above []string, place value.Place) []string {
	cells := r.Cells
	for i, c := range cells {
		switch strings.Trim(value.Fold(c), ". ") {
		case `"`, `''`, "ditto", "dito", "dto", "idem", "do", "„", "″", "〃":
			if i < len(above) {
				if &cells[0] == &r.Cells[0] {
					cells = slices.Clone(cells)
				}
				cells[i] = above[i]
				im.Say(report.Note, "as above", place, c, "taken from the row above")
			}
		}
	}
	return cells
}

// SettleBare decides how whole numbers without unit of a gauge column are read where
// its heading does not say: as mm² where others of the column have decimals and none
// is a size that only AWG has.
func SettleBare(b *shape.Block, im *draft.Importer) {
	for i := range b.Cols {
		c := &b.Cols[i]
		if c.Field != wirelistname.FieldGauge || c.Said {
			continue
		}
		decimals, gauges := false, false
		for _, r := range b.Rows {
			if i >= len(r.Cells) {
				continue
			}
			switch cell := r.Cells[i]; {
			case shape.IsOnlyAWG(cell):
				gauges = true
			case strings.ContainsAny(cell, ".,") && strings.Trim(cell, "0123456789.,") == "":
				decimals = true
			case cell != "" && strings.Trim(cell, "0123456789") == "":
				c.Whole = true
			}
		}
		switch {
		case c.Section && gauges:
			c.Bare = value.BareAWG // no wire has 22 mm²
		case decimals && !gauges:
			c.Bare = value.BareMM2
		}
	}
}
