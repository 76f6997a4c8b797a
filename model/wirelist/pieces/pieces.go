package pieces

import (
	"cmp"
	"slices"
	"strings"

	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// least is how many lines must tell a wire, mostLines how many lines notes have: a longer list is made by a program, which does not write
// lines of this kind (no source).
const (
	least     = 3
	mostLines = 2000
)

// Taken are rows of a table that is read otherwise, without headings.
type Taken struct {
	Rows       []table.Row
	Colourless bool // no colour is read in them
	Numbered   bool // most have a number alone in their note, which may be a size
	OneEnd     bool // no far end is read in them
	Under      bool // the text above them names a connector, and the cavity that each begins with is read as none
	Odd        bool // an end is read in them that is none: it has a colour in it, or a sign that names no end
}

// Rows makes rows of a table of the lines of a table that tell a wire each. Those that are read otherwise are taken with the free ones,
// which nothing reads, where each of them is understood, and more is understood so than was. Else the free ones are taken alone, where
// three of four tell a wire, and three do. ok is false, and the rows are as they were, where neither holds.
func Rows(h shape.Headings, t *table.Table, free []table.Row, taken Taken) (rows []table.Row, ok bool) {
	if n := len(free) + len(taken.Rows); h.HeadLine() > 0 || h.Numbered() || n == 0 || n > mostLines {
		return t.Rows, false // a person has said where its columns are
	}
	most := mostCells
	if f := strings.ToLower(t.File); strings.HasSuffix(f, ".txt") || strings.HasSuffix(f, ".md") {
		most = mostGaps
	}
	if len(taken.Rows) > 0 && (len(free) > 0 || taken.Odd || taken.Under || taken.Colourless || taken.OneEnd || taken.Numbered) {
		all := slices.Concat(taken.Rows, free)
		slices.SortStableFunc(all, func(a, b table.Row) int { return cmp.Compare(a.Line, b.Line) })
		if of := read(h, all, most); of.explainMore(taken) {
			return of.settled(t), true
		}
	}
	of := read(h, free, most)
	if of.told >= least && 4*of.told >= 3*(of.told+of.failed) {
		return of.settled(t), true
	}
	if len(taken.Rows) == 0 {
		if of = linesOf(h, free, most, reader{counted: true}); of.countCavities(t) {
			return of.settled(t), true
		}
	}
	return t.Rows, false
}

// leastFar is how many lines that begin with a cavity must tell a far end, where none was read in a column (no source).
const leastFar = 2

// explainMore reports whether the lines say more than what was read of them: where an end was odd, where lines are understood that were
// left out, where a colour stood in no column, where rows of several cells were a table without headings, and where a number is a size of
// which one line alone does not say what it is.
func (all lines) explainMore(taken Taken) bool {
	for _, r := range taken.Rows {
		if all.of[r.Line] == nil {
			return false
		}
	}
	n := all.n
	if all.told < least || all.failed > 0 {
		return false
	}
	if all.pins == n {
		return taken.Odd || all.told == n && (taken.Under || len(all.of) > len(taken.Rows)) || taken.OneEnd && all.far >= leastFar ||
			taken.Colourless && 4*(all.coloured+all.free) >= 3*n && all.coloured >= least
	}
	if all.both < n-all.free {
		return taken.Odd && all.told == n
	}
	return taken.Odd || all.told == n && len(all.of) > len(taken.Rows) ||
		taken.OneEnd && 2*all.parted >= n || taken.Numbered && 2*all.bare >= n
}

// read reads some rows, in the language whose short forms of colours say more.
func read(h shape.Headings, rows []table.Row, most int) lines {
	of := linesOf(h, rows, most, reader{})
	if german := linesOf(h, rows, most, reader{lang: "de"}); german.told > of.told {
		of = german
	}
	if romance := linesOf(h, rows, most, reader{romance: true}); romance.told > of.told {
		of = romance
	}
	return of
}

// settled is the table with the lines as rows of a table.
func (all lines) settled(t *table.Table) []table.Row {
	all.settleBare()
	all.settleCodes()
	all.settleAsides()
	return all.spread(t)
}

// lines are the lines that tell a wire, by the line of the file.
type lines struct {
	lang   string
	of     map[int]*line
	asked  map[int]bool // the lines that were asked
	n      int          // how many wires and free cavities they tell
	told   int          // how many say what wire it is, or its cavities beyond doubt
	failed int          // how many of the others may tell a wire
	both   int          // how many tell two ends
	parted int          // how many have several cells
	bare   int          // how many have a number that may be a size

	pins, coloured, free int // how many begin with a cavity, say a colour, say that no wire is there
	ids                  int // how many have an id of their own
	onlyTo               int // how many say where a wire goes, and not from where
	far                  int // how many that begin with a cavity tell a far end
}

// mostCells is how many cells a line has that its commas part, mostGaps how many those of a text that gaps part; a row of more is one of
// a table, whose columns are to be named (no source).
const (
	mostCells = 3
	mostGaps  = 6
)

// linesOf reads some rows.
func linesOf(h shape.Headings, rows []table.Row, most int, r reader) lines {
	all := lines{lang: r.lang, of: map[int]*line{}, asked: map[int]bool{}}
	r.key = h.Colours
	for _, row := range rows {
		if row.Level > 0 || row.Struck || row.Sketch || row.Ruled && h.KnowsOne(row) {
			continue
		}
		cells := nonEmpty(row.Cells)
		text := joined(cells)
		if row.Gap != nil && len(cells) == 1 && r.isColour(row.Gap[1]) {
			text = row.Gap[0] + "  " + row.Gap[1] // "to Lamp     red" is no red lamp
		}
		if huekey.ReadColourKey(text) != nil {
			continue // it is told as such
		}
		all.asked[row.Line] = true
		switch l, ok := r.lineOrMore(text); {
		case row.Drawn != nil:
			all.failed++ // package strokes or arrow has parted it
		case ok && len(cells) <= most:
			if l.order {
				l.notes = append(l.notes, text) // a person reads it again beside the ends
			}
			all.of[row.Line] = l
			for of := range l.each {
				all.count(of, len(cells))
			}
		case len(all.of) > 0 && mayTell(text): // above all of them stand titles
			all.failed++
		}
	}
	return all.withoutSteps()
}

// withoutSteps leaves out the numbered lines that name a thing, where most tell two ends: "1. Take the lid off" among steps that lay a
// wire each.
func (all lines) withoutSteps() lines {
	if all.pins == 0 || all.both < all.pins {
		return all
	}
	left := lines{lang: all.lang, of: map[int]*line{}, asked: all.asked, failed: all.failed}
	for i, l := range all.of {
		if l.pin == "" {
			left.of[i] = l
			for of := range l.each {
				left.count(of, 1)
			}
		}
	}
	left.parted = all.parted
	return left
}

// each yields what is told, line by line in any order.
func (all lines) each(yield func(*line) bool) {
	for _, l := range all.of {
		for of := range l.each {
			if !yield(of) {
				return
			}
		}
	}
}

// count counts what a line of some cells says.
func (all *lines) count(l *line, cells int) {
	all.n++
	for _, of := range []struct {
		n  *int
		is bool
	}{
		{&all.both, len(l.ends) == 2}, {&all.parted, cells > 1}, {&all.ids, l.id != ""}, {&all.bare, l.bare != ""},
		{&all.pins, l.pin != ""}, {&all.far, l.pin != "" && len(l.ends) > 0}, {&all.coloured, l.colour != "" && l.values()},
		{&all.free, l.free()}, {&all.onlyTo, l.onlyTo}, {&all.told, l.sure()},
	} {
		if of.is {
			*of.n++
		}
	}
}

// nonEmpty are the cells with text.
func nonEmpty(cells []string) (all []string) {
	for _, c := range cells {
		if c = strings.TrimSpace(c); c != "" {
			all = append(all, c)
		}
	}
	return all
}
