package wirelist

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
)

// block reads the rows of one block.
func (im *importer) block(b *block, only bool) {
	place := Place{File: b.table.File, Sheet: b.table.Sheet}
	here := func(row int) Place { p := place; p.Row = row; return p }
	for _, c := range b.cols {
		if c.sizes {
			im.say(Note, "column of wires holds sizes", Place{File: place.File, Sheet: place.Sheet, Row: b.head, Column: c.head}, c.head, "taken as the size")
		}
	}
	b.partRuns()
	b.withoutZeros()
	ends := b.has(FieldFrom, FieldTo, FieldFromPin)
	pinTable := b.isPinTable()
	b.settleBare(im)
	b.settleRanges()

	if len(b.rows) > 0 && pinTable && !b.has(FieldConnector) {
		// The name of the first connector may stand below the headings, as the others do.
		if _, first := b.rows[0].Filled(); isText(b.rows[0]) && !isSignOff(b.rows[0]) && (saysConnector(first) || b.startsAgain()) {
			b.titles, b.rows = append(b.titles, b.rows[0]), b.rows[1:]
		}
	}
	var t *term
	var titles []Row
	for _, r := range b.titles {
		if n, first := r.Filled(); n == 2 && (strings.HasSuffix(first, ":") || connectorName(first+": x") != first+": x") {
			r.Cells = []string{strings.Join(r.Cells, " ")} // "Connector:" and its name in two cells
		} else if n > 1 {
			im.say(Note, "above the table", here(r.Line), tidy(strings.Join(r.Cells, " ")), "left out")
			continue
		}
		r.Cells = []string{tidy(strings.Join(r.Cells, " "))}
		titles = append(titles, r)
	}
	if pinTable {
		t = im.connector(b, titles, only)
	} else {
		for _, r := range titles {
			_, text := r.Filled()
			im.say(Note, "above the table", here(r.Line), text, "left out")
		}
	}
	if !pinTable && !ends && !b.has(FieldWire) {
		im.say(Warn, "columns name neither a cavity nor ends", here(b.head), "", "left out")
		return
	}
	for _, c := range b.cols {
		if c.spared {
			im.say(Note, "column that no wire takes", Place{File: place.File, Sheet: place.Sheet, Row: b.head, Column: c.head}, c.head, "kept in the notes")
		} else if c.field == FieldKeep && c.head != "" {
			im.say(Note, "column not understood", Place{File: place.File, Sheet: place.Sheet, Row: b.head, Column: c.head}, c.head, "kept in the notes")
		}
		if c.field == FieldGauge && !c.said && !c.section && c.bare == BareMM2 && c.whole {
			im.say(Note, "whole numbers taken as mm²", Place{File: place.File, Sheet: place.Sheet, Row: b.head, Column: c.head}, c.head, "others of the column have decimals")
		}
	}
	b.twice(im, here(b.head))
	im.states(b, pinTable)
	var above []string
	connector := ""
	last := b.lastData()
	changes := false // the rows are those of a table of changes
	for i, r := range b.rows {
		_, first := r.Filled()
		changes = changes || isRevisionHead(r)
		switch {
		case changes || isSignOff(r):
			im.say(Note, "about the paper", here(r.Line), rowText(r.Cells), "left out")
			continue
		case isTotal(first):
			im.total(b, r)
			continue
		case isText(r):
			if c, ok := readCount(first); ok && t != nil {
				c.row = r.Line
				t.counts = append(t.counts, c)
			} else if t != nil && i < last && b.namesConnector(first, i, t) {
				t = im.connector(b, []Row{r}, false)
			} else if i < last {
				im.say(Note, "remark between the rows", here(r.Line), first, "left out")
			} else {
				im.say(Note, "below the table", here(r.Line), first, "left out")
			}
			continue
		}
		if b.deleted(r.Cells) {
			im.say(Warn, "row marked as deleted", here(r.Line), rowText(r.Cells), "left out")
			continue
		}
		cells := im.ditto(r, above, here(r.Line))
		cells, notes := im.withoutFormulas(b, cells, here(r.Line))
		cells, notes = im.withoutStruck(b, cells, notes, here(r.Line))
		above = cells
		owner := t
		if pinTable && b.has(FieldConnector) {
			name := b.cell(cells, FieldConnector)
			if name == "" && connector != "" {
				im.say(Note, "connector not repeated", here(r.Line), connector, "taken from the row above")
				name = connector
			}
			if connector = name; name != "" {
				owner = im.named(name, here(r.Line), true)
			}
		}
		im.row(b, cells, notes, owner, here(r.Line))
	}
}

// states notes what a block has a place for.
func (im *importer) states(b *block, pinTable bool) {
	all := map[Field]string{FieldWire: "id", FieldSignal: "signal", FieldGauge: "size", FieldSpec: "specification", FieldColour: "colour", FieldCurrent: "current", FieldFuse: "fuse", FieldLength: "length", FieldCable: "unit"}
	for _, c := range b.cols {
		if what := all[c.field]; what != "" {
			im.rep.States[what] = true
		}
	}
	if pinTable {
		im.rep.States["reserved"] = true // each cavity has a row
	}
}

// deleted: what the row is for, its note, or a column of no meaning says that it is gone.
func (b *block) deleted(cells []string) bool {
	for i, c := range cells {
		if c == "" || !isDeleted(c) {
			continue
		}
		if i >= len(b.cols) {
			return true
		}
		switch b.cols[i].field {
		case FieldKeep, FieldNote, FieldSignal, FieldWire, FieldFrom, FieldTo, FieldColour, FieldGauge:
			return true
		}
	}
	return false
}

// lastData is the index of the last row that is neither a remark nor a total.
func (b *block) lastData() int {
	for i := len(b.rows) - 1; i >= 0; i-- {
		if _, first := b.rows[i].Filled(); !isText(b.rows[i]) && !isTotal(first) {
			return i
		}
	}
	return -1
}

// namesConnector: a row of one text between the rows of a pin table starts the next
// connector where it says so, where it begins with a designator, and where the cavities
// begin anew behind it.
func (b *block) namesConnector(text string, i int, t *term) bool {
	if saysConnector(text) {
		return true
	}
	for _, r := range b.rows[i+1:] {
		if isText(r) {
			continue
		}
		pin := b.cell(r.Cells, FieldPin)
		_, named := t.at[pin]
		return pin != "" && named
	}
	return false
}

// startsAgain: rows of one text part the rows of a pin table, and behind a later one the
// cavities begin anew: the first names a connector as well.
func (b *block) startsAgain() bool {
	seen := map[string]bool{}
	parted := false
	for _, r := range b.rows[1:] {
		if isText(r) {
			parted = true
			continue
		}
		pin := b.cell(r.Cells, FieldPin)
		if pin != "" && seen[pin] {
			return parted
		}
		seen[pin] = true
	}
	return false
}

// saysConnector: a text with the word for one, or a designator at its head.
func saysConnector(text string) bool {
	first, _, _ := strings.Cut(text, " ")
	return connectorName(text) != text || isDesignator(strings.TrimRight(first, ":,"))
}

// connector makes the termination of a pin table; nil where each row names its own.
func (im *importer) connector(b *block, titles []Row, only bool) *term {
	info := readTitle(titles, im.cat)
	row := info.row
	if row == 0 {
		row = b.head
	}
	place := Place{File: b.table.File, Sheet: b.table.Sheet, Row: row}
	if b.has(FieldConnector) {
		for _, text := range append(info.other, info.name) {
			if text != "" {
				im.say(Note, "above the table", place, text, "left out")
			}
		}
		return nil
	}
	if info.paper != "" && !im.h.Head.Name.Set {
		im.h.Head.Name = model.Some(info.paper)
		im.say(Note, "heading of the whole list", Place{File: place.File, Sheet: place.Sheet}, info.paper, "taken as the name of the harness")
	} else if info.paper != "" && info.paper != im.h.Head.Name.V {
		im.say(Note, "above the table", place, info.paper, "left out")
	}
	name := info.name
	switch {
	case name != "":
	case im.opt.Recipe != nil && im.opt.Recipe.Connector != "":
		name = im.opt.Recipe.Connector
	case b.table.Sheet != "" && only && !plainSheet(b.table.Sheet):
		name = b.table.Sheet
	case only:
		name = baseName(b.table.File)
	default:
		name = fmt.Sprintf("Connector %d", len(im.terms)+1)
		im.say(Warn, "no heading names the connector", place, "", "called by a number")
	}
	if n, first := im.byKey[key(name)], place; n != nil && n.titled {
		im.say(Note, "second table of one connector", first, name, "read as one connector")
	}
	t := im.named(name, place, true)
	if info.insert != "" && !t.Insert.Set {
		t.Insert = model.Some(info.insert)
	}
	if info.unknown != "" {
		info.other = append(info.other, "insert "+info.unknown)
		im.say(Warn, "unknown insert", place, info.unknown, "its cavities are those of the table")
	}
	if info.gender != "" && !t.Gender.Set {
		t.Gender = model.Some(info.gender)
	}
	if len(info.other) > 0 && !t.Device.Set {
		t.Device = model.Some(strings.Join(info.other, ", "))
	}
	t.counts = append(t.counts, info.counts...)
	return t
}

// plainSheet: the name a sheet has when nobody named it.
func plainSheet(name string) bool {
	f := strings.TrimRight(fold(name), "0123456789 ")
	return slices.Contains([]string{"sheet", "tabelle", "feuil", "feuille", "hoja", "foglio", "table"}, f)
}

// baseName is a file name without folders and ending.
func baseName(file string) string {
	file = file[strings.LastIndexAny(file, `/\`)+1:]
	if i := strings.LastIndexByte(file, '.'); i > 0 {
		file = file[:i]
	}
	return strings.ReplaceAll(file, ":", "-")
}

func (b *block) has(fields ...Field) bool {
	return slices.ContainsFunc(b.cols, func(c column) bool { return slices.Contains(fields, c.field) })
}

// cell is what a row holds of a field: the first cell of those that have one value, the
// others joined.
func (b *block) cell(cells []string, f Field) string {
	s, _ := b.cellAt(cells, f)
	return s
}

func (b *block) cellAt(cells []string, f Field) (text string, col int) {
	col = -1
	for i, c := range b.cols {
		if c.field != f || i >= len(cells) || cells[i] == "" {
			continue
		}
		if col < 0 {
			text, col = cells[i], i
			if slices.Contains(once(), f) {
				break
			}
			continue
		}
		text = joinNonEmpty(map[bool]string{true: " ", false: "; "}[b.cols[col].several], text, cells[i])
	}
	return text, col
}

// ditto fills in marks that say "as above".
func (im *importer) ditto(r Row, above []string, place Place) []string {
	cells := r.Cells
	for i, c := range cells {
		switch strings.Trim(fold(c), ". ") {
		case `"`, `''`, "ditto", "dito", "dto", "idem", "do", "„", "″", "〃":
			if i < len(above) {
				if &cells[0] == &r.Cells[0] {
					cells = slices.Clone(cells)
				}
				cells[i] = above[i]
				im.say(Note, "as above", place, c, "taken from the row above")
			}
		}
	}
	return cells
}

// settleBare decides how whole numbers without unit of a gauge column are read where
// its heading does not say: as mm² where others of the column have decimals and none
// is a size that only AWG has.
func (b *block) settleBare(im *importer) {
	for i := range b.cols {
		c := &b.cols[i]
		if c.field != FieldGauge || c.said {
			continue
		}
		decimals, gauges := false, false
		for _, r := range b.rows {
			if i >= len(r.Cells) {
				continue
			}
			switch cell := r.Cells[i]; {
			case isOnlyAWG(cell):
				gauges = true
			case strings.ContainsAny(cell, ".,") && strings.Trim(cell, "0123456789.,") == "":
				decimals = true
			case cell != "" && strings.Trim(cell, "0123456789") == "":
				c.whole = true
			}
		}
		switch {
		case c.section && gauges:
			c.bare = BareAWG // no wire has 22 mm²
		case decimals && !gauges:
			c.bare = BareMM2
		}
	}
}
