package wirelist

import (
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// sayQuoted says of each line that a letter quotes of an older one, and of those that it ends with, that it is left out.
func sayQuoted(im *draft.Importer, t *table.Table) {
	for _, r := range signoff.Quoted(t.Rows) {
		im.Say(report.Warn, "lines quoted of another letter", table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line},
			shape.RowText(r.Cells), "left out")
	}
	for _, of := range t.Letter {
		if rows := of.Rows; len(rows) > 0 && signoff.Quoted(t.Rows) == nil {
			im.Doubt("lines quoted of another letter", table.Place{File: t.File, Sheet: t.Sheet, Row: rows[0].Line},
				shape.RowText(rows[0].Cells), "left out", rows)
		}
	}
	for _, r := range signoff.Signature(t.Rows) {
		im.Say(report.Note, "about the paper", table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}, shape.RowText(r.Cells), "left out")
	}
}

// letter is the one that some tables quote, where they tell no wire themselves.
//
//	Thanks, that will do.
//	> Pin  Use   Colour
//	> 1    feed  red
type letter struct {
	tables []table.Table
	beside []table.Table // what stands outside
}

// quotedIn is the letter that some tables quote; nil where they quote none.
func quotedIn(tables, beside []table.Table) *letter {
	l := letter{beside: append(beside, tables...)}
	for _, t := range tables {
		l.tables = append(l.tables, t.Letter...)
	}
	if l.tables == nil || l.tells() {
		return nil
	}
	return &l
}

// hasLine reports whether some rows have one of a line.
func hasLine(rows []table.Row, line int) bool {
	return slices.ContainsFunc(rows, func(r table.Row) bool { return r.Line == line })
}

// tells reports whether lines of the answer have sizes of wire, or colours beside numbers: they could be a newer list that nobody
// reads.
func (l *letter) tells() bool {
	const least = 2 // lines (no source)
	n := 0
	for _, t := range l.beside {
		for _, r := range signoff.WithoutQuoted(t).Rows {
			text := shape.RowText(r.Cells)
			if value.HasDigit(text) && (value.SizeWithin(text, value.MarkUnknown) != "" || slices.ContainsFunc(name.Words(table.Fold(text)),
				func(w string) bool { _, ok := value.ParseColour(w, ""); return ok && len(w) > 3 })) {
				n++
			}
		}
	}
	return n >= least
}

// say says that the lines of the letter are read, and what of the answer is left out.
func (l *letter) say(im *draft.Importer) {
	if l == nil {
		return
	}
	level, did := report.Note, "read without the signs before its lines"
	if slices.ContainsFunc(l.beside, func(t table.Table) bool { return len(t.Rows) > 0 }) {
		level, did = report.Warn, "read, as no other line tells a wire; look whether the answer changes one"
	}
	for _, t := range l.tables {
		if len(t.Rows) > 0 {
			im.Say(level, "lines quoted of another letter", table.Place{File: t.File, Sheet: t.Sheet, Row: t.Rows[0].Line},
				shape.RowText(t.Rows[0].Cells), did)
		}
	}
	for _, t := range l.beside {
		for _, r := range signoff.WithoutQuoted(t).Rows {
			at := table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}
			im.Say(report.Note, "text of no table", at, shape.RowText(r.Cells), "left out")
		}
	}
}
