package partmark

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
)

const (
	least      = 3    // lines that a mark parts (no source)
	mostLooked = 60   // lines that say whether a text is such a one (no source)
	mostLines  = 2000 // a longer list is made by a program, which does not write lines of this kind (no source)
	longest    = 200  // bytes of a line (no source)
)

// Rows makes rows of a table of such lines; they are as they were where no mark parts them.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() || len(t.Rows) < least || len(t.Rows) > mostLines || toldcells.HasHeads(h, t.Rows) {
		return t.Rows // a person has said where its columns are
	}
	texts := make([]string, len(t.Rows))
	count := map[mark]int{}
	for i, r := range t.Rows {
		if r.Drawn != nil || r.Sketch {
			return t.Rows // others read it
		}
		if r.Level > 0 || r.Struck {
			continue
		}
		if texts[i] = toldcells.Text(r.Cells); len(texts[i]) > longest {
			texts[i] = ""
			continue
		}
		for m := range marksIn(texts[i]) {
			count[m]++
		}
		if i == mostLooked && len(count) == 0 {
			return t.Rows
		}
	}
	var best toldcells.Told
	most := 0
	for m, n := range count {
		if n < least {
			continue
		}
		lines := m.lines(texts)
		if slices.ContainsFunc(lines, hasArrow) || m.spaced && joins(m.signs) && t.Rows[lines[0].Row].Point {
			continue // other readers know them
		}
		if slices.ContainsFunc(lines, func(l toldcells.Line) bool { return h.IsHead(table.Row{Cells: l.Cells}) }) {
			return t.Rows // it has headings, and is read by them
		}
		told := toldcells.Tell(lines, toldcells.Unit(t.Rows), false)
		if good := sound(told, len(lines)); good > most || good == most && good > 0 && len(told.Wires) > len(best.Wires) {
			best, most = told, good
		}
	}
	if most == 0 {
		lines, dittos := gapped(t.Rows)
		told := toldcells.Tell(lines, toldcells.Unit(t.Rows), false)
		if sound(told, len(told.Wires)) > 0 && !slices.ContainsFunc(lines, hasArrow) && (dittos || allPlain(told, t.Rows)) {
			best, most = told, 1
		}
	}
	if most == 0 || !ofPlug(best, t.Rows) {
		return t.Rows
	}
	best.Below(t.Rows)
	rows, _ := best.Spread(t, nil)
	return rows
}

// hasArrow reports whether an arrow stands within a cell, "feed -> fuse 3".
func hasArrow(l toldcells.Line) bool {
	return slices.ContainsFunc(l.Cells, func(c string) bool {
		from, to := arrow.In(c)
		return to > 0 && from > 0 || strings.Contains(c, " > ")
	})
}

// sound is how many wires some lines tell; 0 where they are of another kind: nearly all are to tell their cavity and their colour, or
// that they are free, and most of those a name or a far end as well.
func sound(told toldcells.Told, lines int) int {
	good, coloured, free := told.Good()
	if good < least || 5*good < 4*lines || coloured < 2 || 2*coloured < good || 4*told.Named() < 3*(good-free) {
		return 0
	}
	return good
}

// ofPlug reports whether numbers before lines are cavities: a text above names a connector, one of them is free, or most lines say a size
// or a far end. What is numbered may else be anything, "1/red/gloss".
func ofPlug(told toldcells.Told, rows []table.Row) bool {
	n := 0
	for _, w := range told.Wires {
		if w.From != "" || w.Free {
			return true
		}
		if w.Size != "" || w.To != "" {
			n++
		}
	}
	return 2*n >= len(told.Wires) ||
		slices.ContainsFunc(rows[:told.Wires[0].Row], func(r table.Row) bool { return toldcells.NamesPlug(toldcells.Text(r.Cells)) })
}

// mark is a run of signs between two cells; spaced where blanks stand on both sides of it.
type mark struct {
	signs  string
	spaced bool
}

// marksIn are the marks of a line.
func marksIn(text string) map[mark]int {
	found := map[mark]int{}
	for from := 0; from < len(text); {
		m, at, to := next(text, from)
		if to == 0 {
			break
		}
		if at > 0 && to < len(text) {
			found[m]++
		}
		from = to
	}
	return found
}

// next is the next mark behind a place, where it begins and where it ends, the blanks round it among it; to is 0 where none follows.
func next(text string, from int) (m mark, at, to int) {
	for i := from; i < len(text); {
		r, size := utf8.DecodeRuneInString(text[i:])
		if !parts(r) {
			i += size
			continue
		}
		end := i
		for end < len(text) {
			r, size := utf8.DecodeRuneInString(text[end:])
			if !parts(r) {
				break
			}
			end += size
		}
		before, behind := strings.TrimRight(text[:i], " "), strings.TrimLeft(text[end:], " ")
		m = mark{text[i:end], len(before) < i && len(behind) < len(text)-end}
		if word, _, _ := strings.Cut(behind, " "); m.signs == "-" && m.spaced && name.JoinsDevice(table.Fold(word)) &&
			name.IsPinWord(table.Fold(before[strings.LastIndexByte(before, ' ')+1:])) {
			i = end // "pin - of the pump"
			continue
		}
		half := len(before) < i || len(behind) < len(text)-end
		if half && !m.spaced || !m.spaced && (joins(m.signs) || strings.Trim(m.signs, "=:;") == "") {
			i = end
			continue
		}
		return m, len(before), len(text) - len(behind)
	}
	return mark{}, 0, 0
}

// parts reports whether a sign can part cells: brackets, quotes, and what ends sentences do not.
func parts(r rune) bool {
	return (unicode.IsPunct(r) || unicode.IsSymbol(r)) && !strings.ContainsRune("()[]{}\"'“”„‚‘’`.,?!>→<←#%°&²", r)
}

// joins reports whether signs without blanks round them stand within names: "yellow-brown", "B+".
func joins(signs string) bool { return strings.Trim(signs, "-–+_") == "" }

// lines parts the lines that a mark parts.
func (m mark) lines(texts []string) (all []toldcells.Line) {
	for i, text := range texts {
		var cells []string
		cell := 0
		for from := 0; from < len(text); {
			of, at, to := next(text, from)
			if to == 0 {
				break
			}
			if of == m && to < len(text) && at > cell {
				cells = append(cells, strings.TrimSpace(text[cell:at]))
				cell = to
			}
			from = to
		}
		if len(cells) > 0 {
			all = append(all, toldcells.Line{Row: i, Cells: append(cells, strings.TrimSpace(text[cell:]))})
		}
	}
	return all
}
