package table

import (
	"fmt"
	"strings"
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
	t := Table{File: name}
	count := counter{l: l}
	n := 0
	for line := range strings.SplitSeq(text, "\n") {
		n++
		row := Row{Line: n}
		trimmed := strings.TrimSpace(line)
		switch {
		case trimmed == "" || isRuler(trimmed):
			continue
		case len(trimmed) > l.CellBytes:
			return nil, &Error{Place{File: name, Row: n}, fmt.Sprintf("has %d bytes", len(trimmed)),
				fmt.Sprintf("lines of up to %d", l.CellBytes)}
		case strings.HasPrefix(trimmed, "|") || strings.Count(trimmed, "|") > 1:
			row.Cells = tableCells(trimmed)
			row.strike()
		default:
			if hashes := trimmed[:len(trimmed)-len(strings.TrimLeft(trimmed, "#"))]; len(hashes) <= 6 {
				row.Level = len(hashes)
			}
			text := strings.NewReplacer("**", "", "`", "").Replace(trimmed)
			row.Prose = true
			row.Cells = []string{marked(strings.Trim(strings.TrimLeft(text, "#>-*+ "), "*_# "))}
		}
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
		cell := strings.ReplaceAll(line[:end], `\|`, "|")
		cell = strings.NewReplacer("<br>", " ", "<br/>", " ", "<br />", " ").Replace(cell)
		cell = marked(cell)
		for _, mark := range []string{"**", "`", "__"} {
			if len(cell) > 2*len(mark) && strings.HasPrefix(cell, mark) && strings.HasSuffix(cell, mark) {
				cell = marked(cell[len(mark) : len(cell)-len(mark)])
			}
		}
		cells = append(cells, cell)
		if end >= len(line) {
			return cells
		}
		line = line[end+1:]
	}
}
