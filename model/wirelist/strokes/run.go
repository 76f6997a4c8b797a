package strokes

import (
	"slices"
	"strings"
)

// Run is some lines of a text with strokes, as a table.
type Run struct {
	At, Lines int // the first line, counted from 0, and how many there are
	Rows      []Row
}

// Row is one row of it: cells below the headings, which are the first row, or a text.
type Row struct {
	At    int // its line, counted from 0
	Cells []string
	Text  bool
	Drawn bool // a text that draws something: a person should look whether it joins pins
	Head  bool
}

// told is a line of a run.
type told struct {
	at   int
	text string
	line line
	is   bool // it is read
}

// leastWires is how many lines with strokes make a run (no source).
const leastWires = 2

// Find finds the runs of a text. A line alone is one where another run says what such lines are.
func Find(lines []string) (all []Run) {
	if all = find(lines, leastWires); len(all) > 0 {
		all = find(lines, 1)
	}
	return append(parted(all), directed(lines)...)
}

// find finds the runs of a text that have so many lines at least.
func find(lines []string, least int) (all []Run) {
	done := 0 // lines that are taken
	for i := 0; i < len(lines); i++ {
		if !mayTell(lines[i]) {
			continue
		}
		run := gathered(lines, i)
		if len(run) == 0 {
			continue
		}
		last := run[len(run)-1].at
		run = append(above(lines, done, run), run...)
		if r, ok := made(lines, done, run, least); ok {
			all, done = append(all, r), last+1
		}
		i = last
	}
	return all
}

// Has reports whether a text has such a run.
func Has(text string) bool {
	if !strings.Contains(text, "--") && !strings.ContainsAny(text, "─━—–→←↔") && !strings.Contains(text, "==") &&
		!strings.Contains(text, " - ") && !strings.Contains(text, "<-") {
		return false
	}
	return len(Find(strings.Split(text, "\n"))) > 0
}

// mayTell is a cheap look whether a line can have a stroke between two ends.
func mayTell(line string) bool {
	const most = 200 // characters (no source)
	return len(line) < most && strings.IndexByte(line, '|') < 0 && strings.IndexByte(line, ';') < 0 &&
		(strings.Contains(line, "--") || strings.Contains(line, "==") || strings.Contains(line, "__") || strings.Contains(line, "- -") ||
			strings.Contains(line, "->") || strings.Contains(line, " - ") || strings.Contains(line, "~~") ||
			strings.ContainsAny(line, "─━—–→←↔"))
}

// gathered are the lines of a run that begins at a line; none where no run does. Between them may stand an empty line, and a few that
// draw something.
func gathered(lines []string, i int) (run []told) {
	const mostEmpty, mostDrawn = 1, 3 // between two lines that are read (no source)
	empty, odd := 0, 0
	for n := i; n < len(lines); n++ {
		text := plain(lines[n])
		t := told{at: n, text: text}
		switch {
		case text == "":
			if empty++; empty > mostEmpty {
				return trimmed(run)
			}
			continue
		case strings.TrimSpace(text) == "::" || strings.HasPrefix(strings.TrimSpace(text), "```"):
			return trimmed(run)
		}
		if mayTell(lines[n]) || strings.IndexByte(lines[n], '|') >= 0 {
			t.line, t.is = read(text)
		}
		if !t.is {
			t.line.alone, t.is = alone(text)
		}
		if !t.is && len(run) > 0 {
			t.line.alone, t.is = cutOff(text)
		}
		if !t.is && len(run) > 0 && len(run[0].line.wires) > 0 {
			t.line, t.is = besides(text, run[0].line.wires[0])
		}
		if len(run) == 0 && !t.is {
			return nil
		}
		if t.is {
			empty, odd = 0, 0
			run = append(run, t)
			continue
		}
		if odd++; odd > mostDrawn || !partlyDrawn(text) && !isDrawing(text) && empty > 0 {
			return trimmed(run)
		}
		run = append(run, t)
	}
	return trimmed(run)
}

// alone is the pin in brackets that a line holds and nothing else.
func alone(text string) (pins []end, ok bool) {
	in, before, ok := closing(strings.TrimSpace(text))
	pin, is := pinOf(in, true)
	if !ok || !is || before != "" || !strings.HasPrefix(strings.TrimSpace(text), "(") {
		return nil, false
	}
	return []end{{pin: pin, in: true, at: strings.Index(text, "(")}}, true
}

// trimmed is a run without what is not read at its end, but for lines right below it that draw something.
func trimmed(run []told) []told {
	last := len(run)
	for last > 0 && !run[last-1].is {
		last--
	}
	for last > 0 && last < len(run) && run[last].at == run[last-1].at+1 && partlyDrawn(run[last].text) {
		last++
	}
	return run[:last]
}

// made makes a table of a run; ok is false where it is none.
func made(lines []string, done int, run []told, least int) (r Run, ok bool) {
	var wires []wire
	joins, short := 0, 0
	for _, t := range run {
		wires = append(wires, t.line.wires...)
		if len(t.line.wires) > 0 {
			joins++
		}
		if len(t.line.wires) > 0 && isShortPair(t.line.wires[0]) {
			short++
		}
	}
	if joins < least || short > 0 && !surePairs(wires, short, joins) || !standAlike(wires) {
		return r, false
	}
	heads := headsOf(lines, done, run[0].at, wires)
	if !settled(run, wires, heads, least) {
		return r, false
	}
	wires = nil
	for _, t := range run {
		wires = append(wires, t.line.wires...)
	}
	if namesOfPins(wires) {
		for k := range run {
			namesAside(run[k].line.wires)
		}
	}
	t := tableOf(heads, wires)
	r.At, r.Lines = heads.at, run[len(run)-1].at+1-heads.at
	r.Rows = append(r.Rows, heads.texts...)
	r.Rows = append(r.Rows, Row{At: max(heads.line, heads.at), Cells: t.heads(), Head: true})
	for _, one := range run {
		if len(one.line.wires) == 0 && len(one.line.alone) == 0 {
			r.Rows = append(r.Rows, textRow(one.at, one.text))
			continue
		}
		for _, a := range one.line.alone {
			r.Rows = append(r.Rows, Row{At: one.at, Cells: t.alone(a)})
		}
		for _, w := range one.line.wires {
			for _, each := range eachOf(w) {
				r.Rows = append(r.Rows, Row{At: one.at, Cells: t.cells(each)})
			}
		}
		if one.line.rest != "" {
			r.Rows = append(r.Rows, textRow(one.at, one.line.rest))
		}
	}
	withoutEmpty(r.Rows)
	return r, true
}

// withoutEmpty takes the columns off that have a heading and nothing below it.
func withoutEmpty(rows []Row) {
	var filled [len(columnsOfBoth)]bool
	for _, r := range rows {
		for i, c := range r.Cells {
			if !r.Text && !r.Head && c != "" {
				filled[i] = true
			}
		}
	}
	for k, r := range rows {
		if r.Text {
			continue
		}
		var kept []string
		for i, c := range r.Cells {
			if filled[i] {
				kept = append(kept, c)
			}
		}
		rows[k].Cells = kept
	}
}

// textRow is a row of a text that tells no wire.
func textRow(at int, text string) Row {
	pins := strings.ContainsAny(text, "0123456789")
	return Row{At: at, Cells: []string{strings.Join(strings.Fields(text), " ")}, Text: true, Drawn: pins && strings.Contains(text, "--")}
}

// isShortPair reports whether a wire stands in a cell of two numbers with a short stroke between them.
func isShortPair(w wire) bool { return w.to-w.from < longStroke && w.near.pin != "" && w.far.pin != "" }

// surePairs reports whether short strokes between two numbers join them, and are no ranges: a number is joined to a smaller one, or to
// its like, and a few lines are so.
func surePairs(wires []wire, short, joins int) bool {
	const least = 3 // lines (no source)
	if short < joins {
		return short < 1
	}
	return joins >= least && slices.ContainsFunc(wires, func(w wire) bool { return numberOf(w.near.pin) >= numberOf(w.far.pin) })
}

func numberOf(pin string) (n int) {
	for _, r := range pin {
		if r < '0' || r > '9' {
			return n
		}
		n = 10*n + int(r-'0')
	}
	return n
}

// standAlike reports whether the strokes of most wires stand under each other: they begin, or end, as near as names and numbers differ.
func standAlike(wires []wire) bool {
	const near, most = 3, 512 // characters, and the longest line (no source)
	var from, to [most]int
	for _, w := range wires {
		from[min(w.from, most-1)]++
		to[min(w.to, most-1)]++
	}
	for at := range most {
		n, m := 0, 0
		for k := at; k < min(at+2*near, most); k++ {
			n, m = n+from[k], m+to[k]
		}
		if 2*max(n, m) >= len(wires) {
			return true
		}
	}
	return false
}
