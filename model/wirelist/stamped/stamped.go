package stamped

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model/wirelist/penned"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

const (
	least      = 3   // lines with a stamp (no source)
	mostLooked = 300 // lines that say whether a text is such a one (no source)
)

// Rows makes rows of a table of such lines, below a row of headings; the other lines stay as texts. They are as they were where less than
// three lines have a stamp, half of them have none, or less than two tell a wire. later are the lines that say something else of a wire, by
// the line that tells it.
func Rows(h shape.Headings, t *table.Table) (rows []table.Row, later map[int][]int) {
	if h.HeadLine() > 0 || h.Numbered() || len(t.Rows) < least {
		return t.Rows, nil
	}
	texts := make([]string, len(t.Rows))
	wires := map[int]*wire{}
	stamps := 0
	for i, r := range t.Rows {
		if r.Ruled || r.Level > 0 && stamps > 0 || i > mostLooked && 2*stamps < i {
			return t.Rows, nil
		}
		if texts[i] = lineOf(r.Cells); r.Level > 0 {
			continue
		}
		says, ok := Behind(texts[i])
		if !ok {
			continue
		}
		stamps++
		if w, tells := wireOf(says); tells {
			w.note = value.JoinNonEmpty("; ", w.note, value.JoinNonEmpty(": ", "told "+stampOf(texts[i], says), w.aside))
			wires[i] = &w
		} else {
			mend(wires, i, says, r.Line)
		}
	}
	if stamps < least || 2*stamps < len(t.Rows) || len(wires) < 2 || slices.ContainsFunc(t.Rows, h.IsHead) ||
		slices.ContainsFunc(t.Rows, hasColumnOfStamps) {
		return t.Rows, nil
	}
	return spread(t, texts, wires)
}

// hasColumnOfStamps reports whether a row is of a table with a column for the day and others behind it: "2026-03-04 | W1 | X1 to X2 | 2.5".
func hasColumnOfStamps(r table.Row) bool {
	if len(r.Cells) < 3 {
		return false
	}
	if _, chat := penned.Message(lineOf(r.Cells)); chat {
		return false // "03.05.21, 08:12 - Ana: P1 pin 1 to K2 pin 30, red"
	}
	says, ok := Behind(r.Cells[0] + " x")
	return ok && says == "x"
}

// spread puts the cells of the wires in the place of their rows, below headings; a line that is taken for one of them is no row.
func spread(t *table.Table, texts []string, wires map[int]*wire) (rows []table.Row, later map[int][]int) {
	headed, taken := false, map[int]bool{}
	later = map[int][]int{}
	for i, w := range wires {
		if w.later != nil {
			later[t.Rows[i].Line] = w.later
		}
		for _, line := range w.later {
			taken[line] = true
		}
	}
	for i, r := range t.Rows {
		w := wires[i]
		if w == nil && taken[r.Line] {
			continue
		}
		if w == nil {
			if _, stamp := Behind(texts[i]); stamp && r.Level == 0 {
				r.Cells, r.Prose = []string{texts[i]}, true
			}
			rows = append(rows, r)
			continue
		}
		if !headed {
			rows = append(rows, table.Row{Line: r.Line, Cells: headings(), First: true, Ruled: t.Marked})
			headed = true
		}
		r.First, r.Prose, r.Point, r.Gap, r.Drawn = false, false, false, nil, nil
		r.Cells = []string{w.from, w.to, w.size, w.colour, w.signal, w.note}
		rows = append(rows, r)
	}
	return rows, later
}

func headings() []string { return []string{"From", "To", "Size", "Colour", "Signal", "Note"} }

// stampOf is what stands before what a line says, "04 Mar", "18:03 Teo", without the signs round it.
func stampOf(text, says string) string {
	stamp := strings.TrimSuffix(strings.TrimSpace(text), says)
	stamp = strings.NewReplacer("[", "", "]", "", ": ", " ", " - ", " ").Replace(stamp)
	return strings.Trim(strings.Join(strings.Fields(stamp), " "), " :-–|,")
}

// lineOf is the text that a line had before commas parted it; a number alone before another is the front of one with decimals, "2 | 5 mm2".
func lineOf(cells []string) string {
	var b strings.Builder
	for i, c := range cells {
		if i > 0 {
			b.WriteByte(',')
			if before := strings.TrimSpace(cells[i-1]); !isNumber(before) || c == "" || !value.IsDigit(c[0]) {
				b.WriteByte(' ')
			}
		}
		b.WriteString(c)
	}
	return b.String()
}

// mend takes in what a later line says of a wire that is told already, by its name: its new colour or size. What it was first and the
// line that says so stand in the note.
//
//	[18:09] Teo: dash plug pin 5 to oil sender pin 1. blue 22awg. oil pressure
//	[18:10] Teo: fine, oil pressure is yellow then
func mend(wires map[int]*wire, at int, says string, line int) {
	if strings.HasSuffix(says, "?") {
		return
	}
	for p := range strings.SplitSeq(strings.TrimRight(says, ".! "), ", ") {
		called, now, ok := cutIs(p)
		if !ok {
			continue
		}
		colour, size := point.WireValues(now)
		if g, sized := value.ParseGauge(now, value.BareAWG, value.MarkUnknown); colour == "" && size == "" && sized && g.Size != "" &&
			strings.Trim(now, "0123456789.,") != "" {
			size = now
		}
		if colour == "" && size == "" {
			continue
		}
		var of *wire
		for i, w := range wires {
			if i < at && table.Fold(w.signal) == table.Fold(called) {
				if of != nil {
					return // two are called so
				}
				of = w
			}
		}
		if of == nil {
			continue
		}
		if colour != "" {
			of.note = value.JoinNonEmpty("; ", of.note, "first "+of.colour)
			of.colour = colour
		}
		if size != "" {
			of.note = value.JoinNonEmpty("; ", of.note, "first "+of.size)
			of.size = size
		}
		of.note += fmt.Sprintf("; row %d: %s", line, says)
		of.later = append(of.later, line)
	}
}

// cutIs parts "oil pressure is yellow then" in the name of a wire and what it is now.
func cutIs(text string) (called, now string, ok bool) {
	for _, is := range []string{" is now ", " is ", " ist jetzt ", " ist ", " est maintenant ", " est ", " es ahora ", " es ", " wird ",
		" becomes "} {
		if called, now, ok = strings.Cut(text, is); ok {
			break
		}
	}
	for _, behind := range []string{" then", " now", " instead", " dann", " jetzt", " alors", " entonces", " ahora"} {
		now = strings.TrimSuffix(now, behind)
	}
	for _, the := range []string{"ok ", "so ", "then ", "fine ", "the ", "der ", "die ", "das ", "le ", "la ", "el "} {
		called = strings.TrimPrefix(called, the)
	}
	return strings.TrimSpace(called), strings.TrimSpace(now), ok
}
