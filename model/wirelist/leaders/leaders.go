package leaders

import (
	"regexp"
	"slices"
	"strings"

	"contralay/model/wirelist/alike"
	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// heads are the headings of such a table, and in German, whose short forms of colours count below its own headings.
var heads = map[string][]string{
	"":   {"Pin", "Signal", "Colour", "Size", "To", "Note"},
	"de": {"Klemme", "Signal", "Farbe", "Querschnitt", "Nach", "Bemerkung"},
}

// dots is a row of signs that leads the eye to what stands behind it.
var dots = regexp.MustCompile(`\s*(?:\.{3,}|…+|_{3,}|·{3,}|(?:\. ){3,}\.?)\s*`)

// line is one line: its cavities, several where they have no wire, and what it says of them.
type line struct {
	pins []string
	says string
	led  bool // dots stand in it
}

// Rows puts a table in the place of each run of such lines; the rows are as they were where there is none.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows
	}
	var out []table.Row
	for i := 0; i < len(t.Rows); {
		run := runAt(t, i)
		made := spread(run, t.Rows[i:i+len(run)])
		switch {
		case made != nil && out == nil:
			out = append(slices.Clone(t.Rows[:i]), made...)
		case made != nil:
			out = append(out, made...)
		case out != nil:
			out = append(out, t.Rows[i:i+max(1, len(run))]...)
		}
		i += max(1, len(run))
	}
	if out == nil {
		return t.Rows
	}
	return out
}

// runAt are the lines from one row on, each right below the other, whose cavities rise.
func runAt(t *table.Table, i int) (run []line) {
	rows, last := t.Rows, 0
	for k := i; k < len(rows) && (k == i || rows[k].Line == rows[k-1].Line+1); k++ {
		l, ok := lineOf(rows[k])
		if len(rows[k].Cells) > 1 && (t.Marked || i > 0 && !shape.IsText(rows[i-1])) {
			break // below headings
		}
		if !ok || t.Marked && !rows[k].Prose || name.Ordinal(l.pins[0]) <= last {
			break
		}
		last = name.Ordinal(l.pins[len(l.pins)-1])
		run = append(run, l)
	}
	return run
}

// lineOf reads a row as such a line.
func lineOf(r table.Row) (l line, ok bool) {
	const most = 2 // cells: a wide gap may part the cavity from the rest
	if len(r.Cells) == 0 || len(r.Cells) > most || r.Level > 0 || r.Point {
		return l, false
	}
	if at := strings.IndexAny(r.Cells[0]+" ", " ,.):"); !isPin(r.Cells[0][:at]) {
		return l, false // most rows
	}
	words := strings.Fields(strings.Join(r.Cells, " "))
	all := words
	for len(words) > 0 {
		pin := strings.TrimRight(words[0], ",.):")
		if !isPin(pin) {
			if len(l.pins) == 0 || words[0] != "&" && words[0] != "+" && table.Fold(words[0]) != "and" {
				break
			}
		} else if len(l.pins) > 0 && name.Ordinal(pin) <= name.Ordinal(l.pins[len(l.pins)-1]) {
			break
		} else {
			l.pins = append(l.pins, pin)
		}
		words = words[1:]
	}
	if len(l.pins) == 0 || len(words) == 0 {
		return l, false
	}
	l.says = strings.Join(words, " ")
	if len(l.pins) > 1 && !name.OnlyState(l.says) {
		l.pins, l.says = l.pins[:1], strings.Join(all[1:], " ")
	}
	if at := dots.FindStringIndex(l.says); at != nil && at[0] > 0 && at[1] < len(l.says) {
		l.says, l.led = dots.ReplaceAllString(l.says, ", "), true
	}
	return l, true
}

// isPin reports whether a word is a cavity with a place of its own in a row: a number, or a capital.
func isPin(w string) bool {
	return name.Ordinal(w) > 0 && len(w) < 4 && w == strings.ToUpper(w)
}

// isParted reports whether a sign stands behind the cavity, or an arrow in the line: other packages read those.
func (l line) isParted() bool {
	_, to := arrow.In(l.says)
	return to > 0 || strings.ContainsAny(l.says[:1], "-=:|>~") || strings.HasPrefix(l.says, "–") || strings.Contains(l.says, " to ")
}

// least is how many lines a run has (no source).
const least = 3

// spread are the headings and the rows of a run; nil where it is none: two of three lines that have a wire need dots or a value, and all
// cavities are letters where there are no dots.
func spread(run []line, rows []table.Row) (out []table.Row) {
	if len(run) < least {
		return nil
	}
	texts, led, letters := make([]string, len(run)), 0, 0
	for i, l := range run {
		texts[i] = l.pins[0] + ": " + l.says
		if l.led {
			led++
		}
		if strings.Trim(l.pins[0], "0123456789") != "" {
			letters++
		}
	}
	if led < 2 && (letters < len(run) || slices.ContainsFunc(run, line.isParted)) {
		return nil
	}
	lines, ok := alike.Cavities(texts)
	if !ok || !valued(run, lines) {
		return nil
	}
	out = append(out, table.Row{Line: rows[0].Line, Cells: heads[language(lines)], First: true, Ruled: rows[0].Prose})
	for i, r := range rows {
		l := lines[i]
		if states := name.StateOf(run[i].says); states != name.Used && l.Signal == "" {
			l.Signal = run[i].says
		}
		r.Cells, r.Prose = []string{strings.Join(run[i].pins, ", "), l.Signal, l.Colour, l.Size, l.To, l.Remark}, false
		out = append(out, r)
	}
	return out
}

// valued reports whether two of three lines that have a wire say its colour or its size.
func valued(run []line, lines []alike.Line) bool {
	used, told := 0, 0
	for i, l := range lines {
		if name.StateOf(run[i].says) == name.Blank {
			continue
		}
		if used++; l.Colour != "" || l.Size != "" {
			told++
		}
	}
	return told > 1 && 3*told >= 2*used
}

// language is whose short forms of colours the lines have: "de", else "".
func language(lines []alike.Line) string {
	n := map[string]int{}
	for _, l := range lines {
		for _, lang := range []string{"", "de"} {
			if _, ok := value.ParseColour(l.Colour, lang); ok && l.Colour != "" {
				n[lang]++
			}
		}
	}
	if n["de"] > n[""] {
		return "de"
	}
	return ""
}
