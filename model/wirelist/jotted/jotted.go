package jotted

import (
	"maps"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// heads are the headings of the table, of lines that name their device and of those that do not, and in German, whose short forms of
// colours count below its own headings.
var heads = map[bool]map[string][]string{
	false: {"": {"From", "Colour", "Size", "Signal", "To", "Note"}, "de": {"Von", "Farbe", "Querschnitt", "Signal", "Nach", "Bemerkung"}},
	true:  {"": {"Pin", "Colour", "Size", "Signal", "To", "Note"}, "de": {"Klemme", "Farbe", "Querschnitt", "Signal", "Nach", "Bemerkung"}},
}

// Rows makes rows of a table of such lines, below a row of headings; they are as they were where less than three lines say where their
// wire goes and what wire it is, or less than three of four of those that are in use. Text between the lines stays where it is.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows // a person has said where its columns are
	}
	of, headed := linesOf(h, t, "")
	if headed || len(of) == 0 {
		return t.Rows
	}
	if german, _ := linesOf(h, t, "de"); german.coloured() > of.coloured() {
		of = german
	}
	return of.spread(t)
}

// lines are those of this kind, by the number of their row in the table.
type lines map[int]line

// coloured counts the colours.
func (of lines) coloured() (n int) {
	for _, l := range of {
		if l.colour != "" {
			n++
		}
	}
	return n
}

// linesOf reads the rows of a table; headed: some row is the headings of a table of its own.
func linesOf(h shape.Headings, t *table.Table, lang string) (of lines, headed bool) {
	of = lines{}
	lots := map[bool]*lot{false: {words: map[string]int{}}, true: {words: map[string]int{}, plain: true}}
	under := false // in a document, below the headings of a table
	for i, r := range t.Rows {
		if r.First || r.Prose {
			under = r.Ruled || r.First && h.IsHead(r)
		}
		if r.Level > 0 || under {
			continue
		}
		if l, is := lineOf(r, lang); is {
			of[i] = l
			lots[l.pin].add(l)
		} else if !t.Marked && h.IsHead(r) {
			return nil, true
		}
	}
	maps.DeleteFunc(of, func(_ int, l line) bool { return !lots[l.pin].areJotted() })
	of.addLettered(t, lang)
	of.size()
	return of, false
}

// lot is what is counted of some lines.
type lot struct {
	used, told int
	words      map[string]int // before the far end
	plain      bool           // other packages part each of them
}

func (a *lot) add(l line) {
	if l.free() {
		return
	}
	a.used++
	if l.told() {
		a.words[l.word]++
		a.told++
		a.plain = a.plain && l.plain
	}
}

// least is how many lines must say where their wire goes and what wire it is (no source).
const least = 3

// areJotted reports whether the lines are of this kind: most say so much, with one word or sign before the far end.
func (a *lot) areJotted() bool {
	if a.told < least || 4*a.told < 3*a.used || a.plain {
		return false
	}
	for _, n := range a.words {
		if 4*n >= 3*a.told {
			return true
		}
	}
	return false
}

// spread puts the cells of the lines in the place of their rows, and headings above each run of them.
func (of lines) spread(t *table.Table) (rows []table.Row) {
	for i, r := range t.Rows {
		l, is := of[i]
		if !is {
			rows = append(rows, of.titled(t.Rows, i))
			continue
		}
		if before, runs := of[i-1]; !runs || before.pin != l.pin {
			rows = append(rows, table.Row{Line: r.Line, Cells: heads[l.pin][l.lang], First: true, Ruled: t.Marked})
		}
		r.First, r.Prose, r.Point = false, false, false
		r.Cells = []string{l.end, l.colour, l.size, l.signal, l.to, l.note}
		rows = append(rows, r)
	}
	return rows
}
