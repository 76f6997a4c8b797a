package table

import (
	"fmt"
	"strings"
)

// A text that is no table as a whole is a document: titles, paragraphs, points, tables, drawn lines. Each form of it has a
// file of its own: drawn.go, aligned.go, titled.go, signed.go.

// document is the way through the lines of one.
type document struct {
	file  string
	lines []string
	at    int  // the line of the file before the first
	code  bool // it stands between fences: no sign at the head of a line makes a title of it
	count *counter
	l     Limits
	rows  []Row
}

// form reads the lines from one on, where they are of it, and says how many they are; 0 where they are not.
type form func(d *document, i int) int

func forms() []form { return []form{drawn, titled, aligned, signed, plainLine} }

// isDocument reports whether a text is more than one table whose cells one sign parts: some line of it draws a table, or on
// most of its lines no sign stands equally often.
func isDocument(name, text string) bool {
	lower := strings.ToLower(name)
	for _, end := range []string{".csv", ".tsv", ".tab"} {
		if strings.HasSuffix(lower, end) {
			return false
		}
	}
	if strings.HasPrefix(strings.ToLower(text), "sep=") {
		return false
	}
	lines := strings.Split(text, "\n")
	for _, l := range lines {
		if isDrawnRule(l) && strings.ContainsAny(l, "+┌├└╔╠╚") {
			return true
		}
	}
	return !isParted(lines)
}

// isParted reports whether one sign parts most lines of a text into as many cells. A comma of a text of words and brackets does
// not, nor does any sign behind the dots of a list.
func isParted(lines []string) bool {
	sep := separator(strings.Join(lines, "\n"))
	n, with, most, signs := 0, 0, 0, 0
	each := map[int]int{}
	for _, l := range lines[:min(len(lines), 200)] {
		l = strings.TrimSpace(l)
		if l == "" {
			continue
		}
		n++
		k := outside(l, sep)
		if k > 0 {
			with++
			each[k]++
			most = max(most, each[k])
		}
		if isPoint(l) || strings.ContainsAny(l, "()→") || strings.Contains(l, "->") || strings.Contains(l, ", ") && sep == ',' {
			signs++
		}
	}
	switch {
	case with == 0:
		return false
	case sep == ',' && 2*signs > with:
		return false
	}
	return 2*with > n && (2*most > n || with*4 > 3*n)
}

// readDocument reads such a text.
func readDocument(name, text string, l Limits) ([]Table, error) {
	d := document{file: name, lines: strings.Split(text, "\n"), count: &counter{l: l}, l: l}
	if err := d.read(); err != nil {
		return nil, err
	}
	return []Table{{File: name, Rows: d.rows, Comma: true, Marked: true, Text: true}}, nil
}

// read reads every line by the first form that takes it.
func (d *document) read() error {
	for i := 0; i < len(d.lines); {
		if len(d.lines[i]) > d.l.CellBytes {
			return &Error{Place{File: d.file, Row: d.at + i + 1}, fmt.Sprintf("has %d bytes", len(d.lines[i])),
				fmt.Sprintf("lines of up to %d", d.l.CellBytes)}
		}
		if strings.TrimSpace(d.lines[i]) == "" {
			i++
			continue
		}
		first := len(d.rows)
		for _, f := range forms() {
			if n := f(d, i); n > 0 {
				i += n
				break
			}
		}
		for _, r := range d.rows[first:] {
			if says, allowed := d.count.row(len(r.Cells)); says != "" {
				return &Error{Place{File: d.file, Row: r.Line}, says, allowed}
			}
		}
	}
	return nil
}

// add keeps a row of the line with some index.
func (d *document) add(i int, r Row) {
	r.Line = d.at + i + 1
	if n, _ := r.Filled(); n > 0 {
		d.rows = append(d.rows, r)
	}
}

// line is a line without the blanks at its ends, "" behind the last.
func (d *document) line(i int) string {
	if i < 0 || i >= len(d.lines) || len(d.lines[i]) > d.l.CellBytes {
		return ""
	}
	return strings.TrimSpace(d.lines[i])
}

// plainLine reads a line of text, and a point without its dot. A line that draws nothing but a rule is none.
func plainLine(d *document, i int) int {
	text := d.line(i)
	if isRule(text) {
		return 1
	}
	row := Row{Prose: true, Point: isPoint(text)}
	for _, dot := range []string{"•", "·", "–", "▪", "○"} {
		row.Point = row.Point || strings.HasPrefix(text, dot+" ")
	}
	if row.Point || startsWithCavity(text) {
		row.Indent = len(d.lines[i]) - len(strings.TrimLeft(d.lines[i], " \t")) + 1
	}
	if row.Point {
		_, text, _ = strings.Cut(text, " ")
	} else if d.code {
		row.Point = startsWithCavity(text)
	}
	row.Cells = []string{marked(text)}
	d.add(i, row)
	return 1
}

// isRule reports whether a line is one sign again and again, or several runs of one: "-----", "== ==".
func isRule(line string) bool {
	line = strings.TrimSpace(line)
	if len(line) < 3 {
		return false
	}
	signs := strings.ReplaceAll(strings.ReplaceAll(line, " ", ""), "\t", "")
	r := []rune(signs)
	return len(r) > 2 && strings.ContainsRune("-=_~^*#─═━.", r[0]) && strings.Trim(signs, string(r[0])) == ""
}
