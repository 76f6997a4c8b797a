package wirelist

import (
	"maps"
	"slices"
	"strings"

	"contralay/model/wirelist/audit"
	"contralay/model/wirelist/dotends"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/farheads"
	"contralay/model/wirelist/jotted"
	"contralay/model/wirelist/leaders"
	"contralay/model/wirelist/midarrow"
	"contralay/model/wirelist/noted"
	"contralay/model/wirelist/penned"
	"contralay/model/wirelist/record"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/splicecells"
	"contralay/model/wirelist/stamped"
	"contralay/model/wirelist/table"
)

// withRecords makes one row of a table of each block of rows that tells a wire; told are the other rows of it, by the first.
func withRecords(im *draft.Importer, h shape.Headings, tables []table.Table) (out []table.Table, told map[table.Place][]table.Place) {
	out, told = slices.Clone(tables), map[table.Place][]table.Place{}
	for i := range out {
		t := &out[i]
		t.Rows = midarrow.Rows(h, t)
		t.Rows = dotends.Rows(h, t)
		t.Rows = splicecells.Rows(h, t)
		t.Rows = farheads.Rows(h, t)
		t.Rows = penned.Rows(h, t)
		t.Rows = withStamped(im, h, t, told)
		t.Rows = jotted.Rows(h, t)
		t.Rows = jotted.Inline(h, t)
		t.Rows = leaders.Rows(h, t)
		t.Rows = leaders.Ends(h, t)
		t.Rows = withoutSketches(im, h, t)
		rows, lines := record.Rows(h, t)
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

// withoutSketches writes the lines of notes as they are read, and says which of them draw the face of a plug.
func withoutSketches(im *draft.Importer, h shape.Headings, t *table.Table) []table.Row {
	rows, left := noted.Rows(h, t)
	for _, r := range left {
		im.Say(report.Note, "sketch of a plug", table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}, shape.RowText(r.Cells), "left out")
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
