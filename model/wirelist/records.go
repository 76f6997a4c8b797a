package wirelist

import (
	"maps"
	"slices"
	"strings"

	"contralay/model/wirelist/atplaces"
	"contralay/model/wirelist/audit"
	"contralay/model/wirelist/boardpads"
	"contralay/model/wirelist/codedwires"
	"contralay/model/wirelist/connectto"
	"contralay/model/wirelist/dotends"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/endrows"
	"contralay/model/wirelist/evenlines"
	"contralay/model/wirelist/farheads"
	"contralay/model/wirelist/gaprows"
	"contralay/model/wirelist/goeson"
	"contralay/model/wirelist/huelines"
	"contralay/model/wirelist/jotted"
	"contralay/model/wirelist/keyed"
	"contralay/model/wirelist/leaders"
	"contralay/model/wirelist/leadvalues"
	"contralay/model/wirelist/likeabove"
	"contralay/model/wirelist/manual"
	"contralay/model/wirelist/manywires"
	"contralay/model/wirelist/midarrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/noted"
	"contralay/model/wirelist/ownends"
	"contralay/model/wirelist/parthead"
	"contralay/model/wirelist/partmark"
	"contralay/model/wirelist/penned"
	"contralay/model/wirelist/pinlines"
	"contralay/model/wirelist/plaintitle"
	"contralay/model/wirelist/record"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/severalto"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/splicecells"
	"contralay/model/wirelist/spokenpins"
	"contralay/model/wirelist/squaremm"
	"contralay/model/wirelist/stamped"
	"contralay/model/wirelist/stripsides"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/twoheads"
	"contralay/model/wirelist/wiresaid"
)

// withRecords makes one row of a table of each block of rows that tells a wire; told are the other rows of it, by the first.
func withRecords(im *draft.Importer, h shape.Headings, tables []table.Table) (out []table.Table, told map[table.Place][]table.Place) {
	out, told = slices.Clone(tables), map[table.Place][]table.Place{}
	for i := range out {
		t := &out[i]
		t.Rows = plaintitle.Rows(t)
		t.Rows = manual.Rows(t)
		t.Rows = goeson.Rows(t)
		t.Rows = evenlines.Rows(h, t)
		t.Rows = withPlaces(im, h, t)
		t.Rows = atplaces.Below(h, t)
		t.Rows = boardpads.Rows(h, t)
		t.Rows = boardpads.Lines(h, t)
		t.Rows = boardpads.Gaps(h, t)
		t.Rows = withCircuit(im, h, t)
		t.Rows = withThings(im, h, t)
		t.Rows = withPins(im, h, t)
		t.Rows = pinlines.Braced(t)
		t.Rows = withOwnEnds(im, h, t)
		t.Rows = midarrow.Rows(h, t)
		t.Rows = gaprows.Rows(h, t)
		t.Rows = withParts(im, h, t)
		t.Rows = withStrips(im, h, t)
		t.Rows = twoheads.Rows(h, t)
		t.Rows = severalto.Rows(h, t)
		t.Rows = codedwires.Rows(h, t)
		t.Rows = dotends.Rows(h, t)
		t.Rows = splicecells.Rows(h, t)
		t.Rows = farheads.Rows(h, t)
		t.Rows = withLines(t, told, huelines.Below, h)
		t.Rows = huelines.DeviceColumn(h, t)
		t.Rows = withLines(t, told, huelines.Gapped, h)
		t.Rows = withLines(t, told, huelines.UnderColours, h)
		t.Rows = huelines.Cells(h, t)
		t.Rows = huelines.Inline(h, t)
		t.Rows = withLines(t, told, spokenpins.Asked, h)
		t.Rows = leadvalues.Rows(h, t)
		t.Rows = penned.Rows(h, t)
		t.Rows = wiresaid.Rows(h, t)
		t.Rows = keyed.Pairs(h, t)
		t.Rows = partmark.Rows(h, t)
		t.Rows = manywires.Rows(h, t)
		t.Rows = spokenpins.Chat(h, t)
		t.Rows = withLines(t, told, keyed.Cards, h)
		t.Rows = withLines(t, told, spokenpins.Cards, h)
		t.Rows = withStamped(im, h, t, told)
		t.Rows = withAbove(im, h, t)
		t.Rows = jotted.Rows(h, t)
		t.Rows = jotted.Inline(h, t)
		t.Rows = leaders.Rows(h, t)
		t.Rows = leaders.Ends(h, t)
		t.Rows = withoutSketches(im, h, t)
		t.Rows = withSquares(im, h, t)
		rows, lines := endrows.Rows(h, t)
		if lines == nil {
			rows, lines = record.Rows(h, t)
		}
		if len(lines) == 0 {
			continue
		}
		for first, all := range lines {
			for _, line := range all[1:] {
				at := table.Place{File: t.File, Sheet: t.Sheet, Row: first}
				told[at] = append(told[at], table.Place{File: t.File, Sheet: t.Sheet, Row: line})
			}
		}
		t.Rows = rows
		if at := slices.IndexFunc(rows, func(r table.Row) bool { return lines[r.Line] != nil }); at >= 0 {
			im.Say(report.Note, "blocks of rows, one for each wire", table.Place{File: t.File, Sheet: t.Sheet, Row: rows[at].Line},
				strings.Join(rows[at].Cells, " | "), "each taken for one row")
		}
	}
	return out, told
}

// withPins makes tables of the lines of pinouts; what the list says of its colours counts in them.
func withPins(im *draft.Importer, h shape.Headings, t *table.Table) []table.Row {
	h.Colours = im.Keys[t.File]
	return pinlines.Rows(h, t)
}

// withOwnEnds writes headings above rows that begin with a cavity of one connector each, and says that nothing but their cells says so.
func withOwnEnds(im *draft.Importer, h shape.Headings, t *table.Table) []table.Row {
	rows, told := ownends.Rows(h, t)
	for _, of := range told {
		im.Doubt("a table without headings", table.Place{File: t.File, Sheet: t.Sheet, Row: of[0].Line}, "",
			"its columns are taken by their cells; say what they mean if they are something else", of)
	}
	return rows
}

// withStrips makes the rows of the wires on both sides of terminals; a person should look where nothing names their strip.
func withStrips(im *draft.Importer, h shape.Headings, t *table.Table) []table.Row {
	rows, unnamed := stripsides.Rows(h, t)
	for _, line := range unnamed {
		im.Say(report.Warn, "terminals of a strip that nothing names", table.Place{File: t.File, Sheet: t.Sheet, Row: line},
			name.BaseName(t.File), "called by the name of the file; say its name")
	}
	return rows
}

// withLines makes rows of several lines each, and notes the other lines of each.
func withLines(t *table.Table, told map[table.Place][]table.Place,
	makes func(shape.Headings, *table.Table) ([]table.Row, map[int][]int), h shape.Headings) []table.Row {
	rows, lines := makes(h, t)
	for first, others := range lines {
		of := table.Place{File: t.File, Sheet: t.Sheet, Row: first}
		for _, line := range others {
			told[of] = append(told[of], table.Place{File: t.File, Sheet: t.Sheet, Row: line})
		}
	}
	return rows
}

// withStamped makes rows of the lines of a log or a chat that tell a wire, and says which lines change one that is told above.
func withStamped(im *draft.Importer, h shape.Headings, t *table.Table, told map[table.Place][]table.Place) []table.Row {
	rows, later := stamped.Rows(h, t)
	for _, first := range slices.Sorted(maps.Keys(later)) {
		of := table.Place{File: t.File, Sheet: t.Sheet, Row: first}
		for _, line := range later[first] {
			at := table.Place{File: t.File, Sheet: t.Sheet, Row: line}
			told[of] = append(told[of], at)
			if k := slices.IndexFunc(t.Rows, func(r table.Row) bool { return r.Line == line }); k >= 0 {
				im.Say(report.Warn, "a line that changes a wire told above", at, shape.RowText(t.Rows[k].Cells),
					"taken; what was said first is in the note")
			}
		}
	}
	return rows
}

// withAbove writes out what lines leave short, and says what was taken for it.
func withAbove(im *draft.Importer, h shape.Headings, t *table.Table) []table.Row {
	rows, told := likeabove.Rows(h, t)
	for _, of := range told {
		at := table.Place{File: t.File, Sheet: t.Sheet, Row: of.Line}
		switch {
		case of.Unit:
			im.Say(report.Note, "a text says the unit of the sizes", at, of.What, "taken for those without one")
		case !of.Free:
			im.Say(report.Note, "as above", at, of.What, "taken from the row above")
		}
	}
	return rows
}

// withCircuit makes a table of the pads of a board that a text tells by their kind, and says that no text names the board.
func withCircuit(im *draft.Importer, h shape.Headings, t *table.Table) []table.Row {
	rows, unnamed := boardpads.Circuit(h, t)
	doubtBoards(im, t, unnamed)
	return rows
}

// withThings makes tables of the pins that stand below a sentence that says what a thing is wired to, and says what is doubtful in them.
func withThings(im *draft.Importer, h shape.Headings, t *table.Table) []table.Row {
	rows, told := connectto.Rows(h, t)
	doubtBoards(im, t, told.Unnamed)
	for _, of := range told.Spoken {
		im.Doubt("pads that a sentence tells the use of", table.Place{File: t.File, Sheet: t.Sheet, Row: of[0].Line}, "",
			"a wire for each; look whether it is one", of)
	}
	return rows
}

// doubtBoards says that no text names the board of some rows.
func doubtBoards(im *draft.Importer, t *table.Table, unnamed [][]table.Row) {
	for _, of := range unnamed {
		im.Doubt("a board that the list does not name", table.Place{File: t.File, Sheet: t.Sheet, Row: of[0].Line}, "",
			"called Connector 1; say what it is called", of)
	}
}

// withPlaces puts tables of two columns that are headed by places in columns for both ends, and says which places those are where no word
// says that pins stand below them.
func withPlaces(im *draft.Importer, h shape.Headings, t *table.Table) []table.Row {
	rows, all := atplaces.Rows(h, t)
	for _, f := range all {
		doubtHeads(im, t, f.Line, f.Places, f.Rows)
	}
	return rows
}

// withParts puts tables that are headed by parts in columns for both ends, and says which parts those are.
func withParts(im *draft.Importer, h shape.Headings, t *table.Table) []table.Row {
	rows, all := parthead.Rows(h, t)
	for _, f := range all {
		if !f.Sure {
			doubtHeads(im, t, f.Line, f.Parts, f.Rows)
		}
	}
	return rows
}

// doubtHeads says that the headings on a line are taken for the devices that the cells of some rows are cavities of.
func doubtHeads(im *draft.Importer, t *table.Table, line int, heads string, rows []table.Row) {
	im.Doubt("headings taken for the names of devices", table.Place{File: t.File, Sheet: t.Sheet, Row: line}, heads,
		"look whether they are, and their cells cavities", rows)
}

// withoutSketches writes the lines of notes as they are read, and says which of them draw the face of a plug.
func withoutSketches(im *draft.Importer, h shape.Headings, t *table.Table) []table.Row {
	say := func(line int, text string) {
		im.Say(report.Note, "sketch of a plug", table.Place{File: t.File, Sheet: t.Sheet, Row: line}, text, "left out")
	}
	for _, f := range t.Faces {
		say(f.Line, f.Text)
	}
	rows, left := noted.Rows(h, t)
	for _, r := range left {
		say(r.Line, shape.RowText(r.Cells))
	}
	return rows
}

// withSquares takes the mm of columns of sizes for mm², and says of which columns.
func withSquares(im *draft.Importer, h shape.Headings, t *table.Table) []table.Row {
	rows, taken := squaremm.Rows(h, t)
	for _, c := range taken {
		im.Doubt("sizes in mm", table.Place{File: t.File, Sheet: t.Sheet, Row: c.Rows[0].Line}, c.Head,
			"taken as mm²: wire is made in these sections; say so if they are diameters", c.Rows)
	}
	return rows
}

// tellLines adds the lines below the first of each table on its side, which each of its rows is made of.
func tellLines(told map[table.Place][]table.Place, read []audit.Table) {
	for i := range read {
		at := table.Place{File: read[i].At.File, Sheet: read[i].At.Sheet}
		for _, r := range read[i].Rows {
			first := at
			if first.Row = r.Line; r.Spans == 0 || told[first] != nil {
				continue
			}
			for n := 1; n < int(r.Spans); n++ {
				at.Row = r.Line + n
				told[first] = append(told[first], at)
			}
		}
	}
}
