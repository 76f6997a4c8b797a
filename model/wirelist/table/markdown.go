package table

import (
	"fmt"
	"strings"

	"contralay/model/wirelist/markup"
)

// hasRuler reports whether a line of the text parts a Markdown header from its table.
func hasRuler(text string) bool {
	for line := range strings.SplitSeq(text, "\n") {
		if isRuler(line) {
			return true
		}
	}
	return false
}

// isRuler is a line of |:---:|---| alone, with two cells or more.
func isRuler(line string) bool {
	return strings.Count(line, "|") > 0 && strings.Contains(line, "--") && strings.Trim(line, "|:- \t") == ""
}

// readMarkdown gives the lines of a table as rows of cells and every other line as a
// row of one cell: a heading without its signs, a point of a list without its dot.
func readMarkdown(name, text string, l Limits) ([]Table, error) {
	t := Table{File: name, Marked: true}
	count := counter{l: l}
	n, before := 0, false // whether the line before is of a table
	open, first, at := false, 0, 0
	var fence []string // the lines since a fence, where one is open
	lines := strings.Split(text, "\n")
	for n < len(lines) {
		line := lines[n]
		limits := markup.Limits{Rows: l.Rows, Columns: l.Columns, CellBytes: l.CellBytes, Bytes: l.FileBytes}
		if rows, took := markup.Table(lines[n:], limits); took > 0 && !open {
			for _, r := range rows {
				row := Row{Line: r.Line + n + 1, First: r.First, Ruled: r.Headed}
				for _, c := range r.Cells {
					row.Cells = append(row.Cells, marked(strings.NewReplacer("**", "", "`", "").Replace(c)))
				}
				if says, allowed := count.row(len(row.Cells)); says != "" {
					return nil, &Error{Place{File: name, Row: row.Line}, says, allowed}
				}
				t.Rows = append(t.Rows, row)
			}
			n, before = n+took, false
			continue
		}
		n++
		row := Row{Line: n}
		trimmed := strings.TrimSpace(line)
		if strings.HasPrefix(trimmed, "```") || strings.HasPrefix(trimmed, "~~~") {
			before = false
			if open = !open; open {
				fence, first, at = nil, len(t.Rows), n
			} else if rows := fenced(name, fence, at, l); rows != nil {
				t.Rows = append(t.Rows[:first], rows...)
			}
			continue
		}
		if open {
			fence = append(fence, line)
		}
		switch {
		case trimmed == "":
			before = false
			continue
		case isRuler(trimmed):
			if last := len(t.Rows) - 1; before && last >= 0 {
				t.Rows[last].Ruled = t.Rows[last].First
			}
			continue
		case len(trimmed) > l.CellBytes:
			return nil, &Error{Place{File: name, Row: n}, fmt.Sprintf("has %d bytes", len(trimmed)),
				fmt.Sprintf("lines of up to %d", l.CellBytes)}
		case strings.HasPrefix(trimmed, "|") || strings.Count(trimmed, "|") > 1:
			row.Cells, row.First = tableCells(trimmed), !before
			row.strike()
		default:
			row.proseOf(line, lines[n:], open)
		}
		before = !row.Prose
		if k, _ := row.Filled(); k == 0 {
			continue
		}
		if says, allowed := count.row(len(row.Cells)); says != "" {
			return nil, &Error{Place{File: name, Row: n}, says, allowed}
		}
		t.Rows = append(t.Rows, row)
	}
	return []Table{t}, nil
}

// proseOf reads a line of Markdown that is of no table: a heading without its signs, a point without its dot. below are the lines
// behind it, code says that it stands between fences.
func (r *Row) proseOf(line string, below []string, code bool) {
	text := strings.TrimSpace(line)
	r.Prose = true
	if !code {
		var level int
		if text, level = markup.WithoutTags(text); level > 0 {
			r.Level = level
		}
		if hashes := len(text) - len(strings.TrimLeft(text, "#")); hashes > 0 && hashes <= 6 {
			r.Level = hashes
		}
	}
	text = strings.TrimLeft(text, "#> ")
	if isBoldTitle(text) && isAboveTable(below) {
		r.Level = boldLevel
	}
	if r.Point = isPoint(text); r.Point {
		text = strings.TrimLeft(text[1:], " ")
	}
	if r.Point || startsWithCavity(text) {
		r.Indent = len(line) - len(strings.TrimLeft(line, " \t")) + 1
	}
	text = strings.NewReplacer("**", "", "`", "").Replace(text)
	r.Cells = []string{marked(withoutBackslashes(strings.Trim(text, "*_# ")))}
}

// boldLevel is the rank of a line in bold letters that stands above a table or a list: below every heading.
const boldLevel = 7

// isBoldTitle reports whether a line is a few words in bold letters and nothing else.
func isBoldTitle(text string) bool {
	text = strings.TrimRight(text, ": ")
	if len(text) < 5 || len(strings.Fields(text)) > 8 || !strings.HasPrefix(text, "**") || !strings.HasSuffix(text, "**") {
		return false
	}
	in := strings.TrimRight(text[2:len(text)-2], ": ")
	return in != "" && !strings.Contains(in, "**") && !strings.ContainsAny(in[len(in)-1:], ".!?")
}

// isAboveTable reports whether the first of some lines that is not empty is of a table or a list.
func isAboveTable(lines []string) bool {
	for _, l := range lines[:min(len(lines), 3)] {
		if l = strings.TrimSpace(l); l != "" {
			return strings.HasPrefix(l, "|") || isPoint(l) || strings.HasPrefix(strings.ToLower(l), "<table") || startsWithCavity(l) ||
				strings.HasPrefix(l, "```")
		}
	}
	return false
}

// fenced reads the lines between two fences as a text of its own, where some of it is a table or a title; nil where none is. at is
// the line of the first fence.
func fenced(name string, lines []string, at int, l Limits) []Row {
	if hasRuler(strings.Join(lines, "\n")) {
		return nil
	}
	if isParted(lines) {
		all, err := readSeparated(name, strings.Join(lines, "\n"), l)
		if err != nil || len(all) == 0 {
			return nil
		}
		rows := all[0].Rows
		for i := range rows {
			rows[i].Line += at
			rows[i].First = i == 0
		}
		return rows
	}
	d := document{file: name, lines: lines, at: at, code: true, count: &counter{l: l}, l: l}
	if d.read() != nil {
		return nil
	}
	return d.rows
}

// strike marks a row all of whose cells are struck through, ~~so~~, and takes the signs off.
func (r *Row) strike() {
	plain := make([]string, len(r.Cells))
	some := false
	for i, c := range r.Cells {
		in, ok := strings.CutPrefix(c, "~~")
		in, closed := strings.CutSuffix(in, "~~")
		if c != "" && (!ok || !closed || in == "" || strings.Contains(in, "~~")) {
			return
		}
		plain[i], some = in, some || c != ""
	}
	if some {
		r.Cells, r.Struck = plain, true
	}
}

// tableCells parts a line at each bar that no backslash stands before, and takes
// emphasis and code marks off.
func tableCells(line string) []string {
	line = strings.TrimPrefix(line, "|")
	if strings.HasSuffix(line, "|") && !strings.HasSuffix(line, `\|`) {
		line = line[:len(line)-1]
	}
	var cells []string
	for {
		end := 0
		for end < len(line) && (line[end] != '|' || end > 0 && line[end-1] == '\\') {
			end++
		}
		cell := withoutBackslashes(line[:end])
		cell = strings.NewReplacer("<br>", " ", "<br/>", " ", "<br />", " ").Replace(cell)
		cell = marked(cell)
		for _, mark := range []string{"**", "`", "__"} {
			if len(cell) > 2*len(mark) && strings.HasPrefix(cell, mark) && strings.HasSuffix(cell, mark) {
				cell = oneBlank(cell[len(mark) : len(cell)-len(mark)])
			}
		}
		if n := strings.Count(cell, "**"); n > 0 && n%2 == 0 { // a part of it is bold
			cell = oneBlank(strings.ReplaceAll(cell, "**", ""))
		}
		cells = append(cells, cell)
		if end >= len(line) {
			return cells
		}
		line = line[end+1:]
	}
}

// isPoint reports whether a line is a point of a list: a dot, a dash or a star, and a blank.
func isPoint(line string) bool {
	return len(line) > 2 && strings.ContainsRune("-*+", rune(line[0])) && line[1] == ' '
}

// withoutBackslashes takes off the signs that keep a mark of Markdown from being one: "\-" is a
// dash, "\|" a bar.
func withoutBackslashes(s string) string {
	if !strings.Contains(s, `\`) {
		return s
	}
	var b strings.Builder
	for i := 0; i < len(s); i++ {
		if s[i] == '\\' && i+1 < len(s) && strings.IndexByte("\\`*_{}[]()<>#+-.!|~", s[i+1]) >= 0 {
			i++
		}
		b.WriteByte(s[i])
	}
	return b.String()
}
