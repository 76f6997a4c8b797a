package penned

import (
	"slices"
	"strings"

	"contralay/model/wirelist/huecodes"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

const (
	least      = 3   // lines that say a colour and a size (no source)
	mostLooked = 300 // lines that say the language, or that this is no such text (no source)
)

// Rows makes rows of a table of such lines, below a row of headings; they are as they were where less than three lines say a colour and a
// size, or less than three of four of those that begin with a cavity.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() || len(t.Rows) < least {
		return t.Rows // a person has said where its columns are
	}
	texts, chat := textsOf(t.Rows)
	of := map[int]*line{}
	told, unit := 0, ""
	for i, r := range t.Rows {
		if r.Level > 0 || r.Ruled || i > mostLooked && told == 0 {
			return t.Rows // a document with tables of its own, or one whose lines say no colours so
		}
		if l, ok := lineOf(texts[i]); ok {
			of[i] = &l
			if l.colour != "" {
				told++
			}
			if l.unit != "" && unit == "" {
				unit = l.unit
			}
		}
	}
	if told < least {
		return t.Rows // most lists
	}
	lang := language(of)
	if lang == "" {
		return t.Rows
	}
	used, far, both := 0, 0, 0
	for _, l := range of {
		if l.said(lang); !l.free && !l.see {
			used++
		}
		if l.byWord && tellsBoth(l.to) {
			both++
		}
		if l.colour != "" && (l.byWord || l.arrow) {
			far++
		}
	}
	if far < least || 4*told < 3*used || both > 1 {
		return t.Rows
	}
	return spread(t, of, texts, chat, headings(of, lang, cmpUnit(unit, t.Rows)))
}

// language is the one in whose short forms and words most of the colours are, and whose words stand before the far ends; "" where nearly
// all of them are in none.
func language(of map[int]*line) string {
	var cells []string
	var rests []string
	for _, i := range sorted(of) {
		if l := of[i]; l.colour != "" && len(cells) < mostLooked {
			cells = append(cells, l.colour)
			rests = append(rests, l.rest)
		}
	}
	best, most := "", 0
	for _, lang := range huecodes.Languages() {
		n, words := 2*huecodes.Readable(cells, lang), 0
		for _, r := range rests {
			if _, ok := behindWord(r, lang); ok {
				words++
			}
		}
		if n*2 < 3*len(cells) {
			continue // three of four
		}
		if n += words; n > most {
			best, most = lang, n
		}
	}
	return best
}

// sorted are the rows of some lines, in their order.
func sorted(of map[int]*line) (at []int) {
	for i := range of {
		at = append(at, i)
	}
	slices.Sort(at)
	return at
}

// cmpUnit is the unit of the sizes: that of a line, else the one that a text says, else square millimetres where a size has decimals.
func cmpUnit(unit string, rows []table.Row) string {
	if unit != "" {
		return unit
	}
	for _, r := range rows {
		for _, w := range strings.Fields(strings.Join(r.Cells, " ")) {
			if w = strings.Trim(w, ".,;:()"); len(w) < 6 && isUnit(w) && w != "kv" {
				return w
			}
		}
	}
	return ""
}

// headings are those of the table, the colour in the language that its short forms are of.
func headings(of map[int]*line, lang, unit string) func(pin bool) []string {
	size := "Size"
	switch table.Fold(unit) {
	case "awg", "ga":
		size = "AWG"
	case "":
		for _, l := range of {
			if strings.ContainsAny(l.size, ".,") {
				size = "mm2"
			}
		}
	default:
		size = "mm2"
	}
	return func(pin bool) []string {
		first := "From"
		if pin {
			first = "Pin"
		}
		return []string{first, huecodes.Heading(lang), size, "Signal", "To", "Note"}
	}
}

// spread puts the cells of the lines in the place of their rows, and headings above each run of them.
func spread(t *table.Table, of map[int]*line, texts []string, chat bool, heads func(pin bool) []string) (rows []table.Row) {
	for i, r := range t.Rows {
		l := of[i]
		if l == nil {
			if r.Cells = withoutFrame(r.Cells, texts[i]); chat {
				r.Cells = []string{texts[i]} // a message that tells no wire
			}
			rows = append(rows, r)
			continue
		}
		pin := l.pin != ""
		if before := of[i-1]; before == nil || (before.pin != "") != pin {
			rows = append(rows, table.Row{Line: r.Line, Cells: heads(pin), First: true, Ruled: t.Marked})
		}
		r.First, r.Prose, r.Point, r.Gap, r.Drawn = false, false, false, nil, nil
		if l.free {
			l.signal = l.rest
		}
		r.Cells = []string{l.pin + l.end, l.colour, l.size, l.signal, l.to, l.note}
		rows = append(rows, r)
	}
	return rows
}

// withoutFrame takes the signs off that frame a title, "== X2 winch ==".
func withoutFrame(cells []string, text string) []string {
	const frame = "=~*_#"
	if bare := strings.Trim(text, frame+" "); len(text)-len(bare) > 3 && strings.ContainsRune(frame, rune(text[0])) && bare != "" {
		return []string{bare}
	}
	return cells
}
