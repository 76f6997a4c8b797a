package pieces

import (
	"slices"
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// heads are the headings of the table, and those of lists with German short forms of colours, which count below German headings.
var heads = map[string][]string{
	"":   {"From", "To", "Colour", "Size", "Signal", "Note"},
	"de": {"Von", "Nach", "Farbe", "Querschnitt", "Signal", "Bemerkung"},
}

// pinHeads are those of lines that begin with a cavity.
var pinHeads = map[string][]string{
	"":   {"Pin", "To", "Colour", "Size", "Signal", "Note"},
	"de": {"Pin", "Nach", "Farbe", "Querschnitt", "Signal", "Bemerkung"},
}

// least is how many lines must tell a wire (no source).
const least = 3

// Rows makes rows of a table of those among the free rows of a table that tell a wire each. ok is false, and the rows are as they
// were, where fewer than three do, or fewer than three of four of those that may.
func Rows(h shape.Headings, t *table.Table, free []table.Row) (rows []table.Row, ok bool) {
	of := of(h, free)
	if of.told < least || 4*of.told < 3*(of.told+of.failed) {
		return t.Rows, false
	}
	return of.settled(t), true
}

// InPlaceOf is Rows of lines that are read otherwise: each of them must tell two ends, and most must be parted in cells, which was a
// table without headings, or have a number for a size, of which one line alone does not say what it is. Where what was read has no
// colours, each must begin with a cavity, and most say a colour.
func InPlaceOf(h shape.Headings, t *table.Table, taken []table.Row, colourless bool) (rows []table.Row, ok bool) {
	of := of(h, taken)
	if of.told < least || of.failed > 0 {
		return t.Rows, false
	}
	if colourless && of.pins == len(of.of) && 4*(of.coloured+of.free) >= 3*len(of.of) && of.coloured >= least {
		return of.settled(t), true
	}
	if of.both < of.told || of.both < len(of.of) {
		return t.Rows, false
	}
	if n := len(of.of); 2*of.parted < n && 2*of.bare < n {
		return t.Rows, false
	}
	return of.settled(t), true
}

// of reads some rows, in the language whose short forms of colours say more.
func of(h shape.Headings, rows []table.Row) lines {
	if h.HeadLine() > 0 || h.Numbered() || len(rows) < least {
		return lines{} // a person has said where its columns are
	}
	of := linesOf(h, rows, "")
	if german := linesOf(h, rows, "de"); german.told > of.told {
		of = german
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
	told   int // how many say what wire it is, or its cavities beyond doubt
	failed int // how many of the others may tell a wire
	both   int // how many tell two ends
	parted int // how many have several cells
	bare   int // how many have a number that may be a size

	pins, coloured, free int // how many begin with a cavity, say a colour, say that no wire is there
}

// mostCells is how many cells a line has that its commas or gaps part; a row of more is one of a table, whose columns are to be named
// (no source).
const mostCells = 3

// linesOf reads some rows.
func linesOf(h shape.Headings, free []table.Row, lang string) lines {
	all := lines{lang: lang, of: map[int]*line{}}
	r := reader{key: h.Colours, lang: lang}
	for _, row := range free {
		if row.Level > 0 || row.Struck || row.Sketch {
			continue
		}
		cells := nonEmpty(row.Cells)
		text := strings.Join(cells, "\t")
		switch l, ok := r.line(text); {
		case ok && len(cells) <= mostCells:
			all.of[row.Line] = l
			if len(l.ends) == 2 {
				all.both++
			}
			if len(cells) > 1 {
				all.parted++
			}
			if l.pin != "" {
				all.pins++
			}
			if l.colour != "" && l.values() {
				all.coloured++
			}
			if l.free() {
				all.free++
			}
			if l.bare != "" {
				all.bare++
			}
			if l.sure() {
				all.told++
			}
		case mayTell(text):
			all.failed++
		}
	}
	return all
}

// mayTell reports whether a line that is not understood is of the kind that tells a wire: short, with a number in it.
func mayTell(text string) bool {
	const most = 14 // words (no source)
	return strings.ContainsAny(text, "0123456789") && len(strings.Fields(text)) <= most && groupOf(text) == ""
}

// settleBare takes the numbers without a unit beside the colours for sizes, where most lines with a colour have one; else they are
// kept as remarks.
func (all lines) settleBare() {
	for _, l := range all.of {
		switch {
		case l.bare == "":
		case l.size == "" && 2*all.bare >= all.coloured:
			l.size = l.bare
		default:
			l.notes = append(l.notes, l.bare)
		}
	}
}

// settleCodes takes the letters that stand alone for colours, where most lines have a colour or such letters; else they name the wire.
func (all lines) settleCodes() {
	coloured, coded := 0, 0
	for _, l := range all.of {
		if l.colour != "" {
			coloured++
		} else if l.code != "" {
			coded++
		}
	}
	for _, l := range all.of {
		switch {
		case l.code == "":
		case l.colour == "" && 4*(coloured+coded) >= 3*len(all.of):
			l.colour = l.code
		default:
			l.called(l.code)
		}
	}
}

// settleAsides takes what stands in brackets for the far end, where most lines that begin with a cavity have one word or two of it and
// tell no far end otherwise; else it is a remark.
func (all lines) settleAsides() {
	used, places := 0, 0
	for _, l := range all.of {
		if l.pin == "" || l.free() {
			continue
		}
		used++
		if len(l.asides) == 1 && len(l.ends) == 0 && isPlace(l.asides[0]) {
			places++
		}
	}
	for _, l := range all.of {
		if places >= least && 4*places >= 3*used && l.pin != "" && !l.free() && len(l.asides) == 1 && len(l.ends) == 0 && isPlace(l.asides[0]) {
			l.ends, l.asides = l.asides, nil
		}
		l.notes = append(l.notes, l.asides...)
	}
}

// spread puts the cells of the lines in the place of their rows, with headings above the first of each run; a line that says a size
// or a colour and nothing else stays as a heading between them.
func (all lines) spread(t *table.Table) (rows []table.Row) {
	var headed []string
	for _, r := range t.Rows {
		l := all.of[r.Line]
		if l == nil {
			if r.Level > 0 {
				headed = nil
			} else if g := groupOf(strings.Join(nonEmpty(r.Cells), "\t")); g != "" {
				r.Cells = []string{g}
			}
			rows = append(rows, r)
			continue
		}
		head := heads[all.lang]
		if l.pin != "" {
			head = pinHeads[all.lang]
		}
		if !slices.Equal(head, headed) {
			rows = append(rows, table.Row{Line: r.Line, Cells: slices.Clone(head), First: true, Ruled: t.Marked})
			headed = head
		}
		r.First, r.Prose, r.Point, r.Gap, r.Drawn = false, false, false, nil, nil
		ends := append(append(nonEmpty([]string{l.pin}), l.ends...), "", "")
		r.Cells = []string{ends[0], ends[1], l.colour, l.size, l.signal, strings.Join(l.notes, "; ")}
		rows = append(rows, r)
	}
	return rows
}

// IsHead reports whether a row is such headings.
func IsHead(r table.Row) bool {
	return slices.ContainsFunc([]map[string][]string{heads, pinHeads}, func(of map[string][]string) bool {
		return slices.Equal(r.Cells, of[""]) || slices.Equal(r.Cells, of["de"])
	})
}

// groupOf is the size of a line that says one of the lines below it and nothing else, "--- 2.5 mm² ---", "1mm2:"; "" of any other.
func groupOf(text string) string {
	text = strings.Trim(text, "-=*_#~:. \t")
	if g, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown); ok && g.Size != "" && !g.IsCable() &&
		strings.Trim(text, "0123456789.,") != "" {
		return text
	}
	return ""
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
