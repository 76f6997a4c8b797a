package table

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"contralay/model/wirelist/columned"
)

// readSeparated reads a text whose cells are parted by one sign. Cells in double
// quotation marks may hold it, a line break and a mark written twice.
func readSeparated(name, text string, l Limits) ([]Table, error) {
	text = columned.WithoutBoxes(text)
	sep, line := separator(text), 1
	if first, rest, more := strings.Cut(text, "\n"); more && len(first) == 5 && strings.HasPrefix(strings.ToLower(first), "sep=") {
		sep, text, line = first[4], rest, 2 // a line that some spreadsheet programs write for each other
	}
	return readParted(name, text, sep, line, l)
}

// readParted reads such a text, of which the sign and the number of the first line are known.
func readParted(name, text string, sep byte, line int, l Limits) ([]Table, error) {
	t := Table{File: name, Comma: sep != ',', Rows: make([]Row, 0, min(strings.Count(text, "\n")+1, l.Rows))}
	count := counter{l: l}
	wide := 0 // of the row before
	for text != "" {
		row := Row{Line: line, Cells: make([]string, 0, wide)}
		rest, lines, err := readRow(text, sep, &row, l)
		if err != "" {
			return nil, &Error{Place{File: name, Row: row.Line}, err,
				fmt.Sprintf("cells of up to %d bytes, each quotation mark closed", l.CellBytes)}
		}
		if len(row.Cells) == 1 && lines == 1 {
			row.Gap = gapOf(text)
		}
		text, line, wide = rest, line+lines, len(row.Cells)
		if n, _ := row.Filled(); n == 0 {
			continue
		}
		if says, allowed := count.row(len(row.Cells)); says != "" {
			return nil, &Error{Place{File: name, Row: row.Line}, says, allowed}
		}
		t.Rows = append(t.Rows, row)
	}
	return []Table{t}, nil
}

// gapOf are the two parts of the first line of a text where a wide gap parts it in two; nil of every other one.
func gapOf(text string) *[2]string {
	line, _, _ := strings.Cut(text, "\n")
	if !strings.Contains(strings.TrimSpace(line), "   ") {
		return nil
	}
	parts := columned.Gapped(line)
	if len(parts) != 2 || parts[1].From-parts[0].To < 3 {
		return nil
	}
	return &[2]string{marked(parts[0].Text), marked(parts[1].Text)}
}

// readRow reads the cells of one row and says how many lines it took.
func readRow(text string, sep byte, row *Row, l Limits) (rest string, lines int, problem string) {
	for {
		var cell string
		if strings.HasPrefix(strings.TrimLeft(text, " "), `"`) && !isDitto(text, sep) {
			text = strings.TrimLeft(text, " ")
			end := closing(text, sep)
			if end < 0 {
				return "", 0, "a quotation mark opens a cell here and none closes it"
			}
			cell, text = strings.ReplaceAll(text[1:end], `""`, `"`), text[end+1:]
			lines += strings.Count(cell, "\n")
			text = strings.TrimLeft(text, " ")
		} else {
			end := strings.IndexAny(text, string([]byte{sep, '\n'})) // whichever comes first: a long line is read once
			if end < 0 {
				end = len(text)
			}
			cell, text = text[:end], text[end:]
		}
		if len(cell) > l.CellBytes {
			return "", 0, fmt.Sprintf("a cell has %d bytes", len(cell))
		}
		if len(row.Cells) <= l.Columns { // one more than allowed is enough to say so
			row.Cells = append(row.Cells, marked(cell))
		}
		switch {
		case text == "":
			return "", lines + 1, ""
		case text[0] == '\n':
			return text[1:], lines + 1, ""
		}
		text = text[1:] // the separator
	}
}

// isDitto reports whether a text begins with a cell that is one quotation mark alone, for what stands above it: a separator that is no
// comma stands behind it, or the line ends. A comma may be the first sign of what is quoted.
func isDitto(text string, sep byte) bool {
	rest := strings.TrimLeft(strings.TrimLeft(text, " ")[1:], " ")
	if rest == "" || rest[0] == '\n' {
		return true
	}
	if rest[0] != sep {
		return false
	}
	line, _, _ := strings.Cut(rest, "\n")
	return sep == '\t' || !strings.Contains(line, `"`) // none on the line closes it
}

// closing finds the mark that ends a quoted cell: one that is not written twice and
// that the separator, the line's end or the text's end follows. Any other, as in
// 24" of a list that quotes nothing, belongs to the cell.
func closing(text string, sep byte) int {
	for i := 1; i < len(text); i++ {
		if text[i] != '"' {
			continue
		}
		if i+1 < len(text) && text[i+1] == '"' {
			i++
			continue
		}
		after := strings.TrimLeft(text[i+1:], " ")
		if after == "" || after[0] == sep || after[0] == '\n' {
			return i
		}
	}
	return -1
}

// separator is the sign that stands equally often on the most lines, of two the one
// that stands more often. A text without any is one column.
func separator(text string) byte {
	type tally struct {
		sep         byte
		lines, each int
	}
	lines := strings.SplitN(text, "\n", 202)
	lines = lines[:min(len(lines), 201)]
	var all []tally
	for _, sep := range []byte{';', '\t', ',', '|', '^', '~'} {
		on := map[int]int{}
		for _, l := range lines {
			if n := outside(l, sep); n > 0 && !strings.HasPrefix(l, "# ") { // a remark
				on[n]++
			}
		}
		best := tally{sep: sep}
		for n, k := range on {
			if k > best.lines || k == best.lines && n > best.each {
				best.lines, best.each = k, n
			}
		}
		all = append(all, best)
	}
	best := slices.MaxFunc(all, func(a, b tally) int {
		return cmp.Or(cmp.Compare(a.lines, b.lines), cmp.Compare(a.each, b.each))
	})
	for _, t := range all { // a sign once in each line may stand within its cells, "96,40"
		if best.each == 1 && t.each > 2 && 5*t.lines >= 4*best.lines {
			best = t
		}
	}
	if best.lines == 0 {
		return ','
	}
	filled := 0
	for _, l := range lines {
		if strings.TrimSpace(l) != "" {
			filled++
		}
	}
	if columned.Bulleted(lines, best.sep) ||
		best.sep == ',' && (columned.SpokenCommas(lines) || columned.OwnSigns(lines) || columned.Paired(lines)) {
		return '\n'
	}
	if best.sep == ',' && columned.Numbered(lines, best.each > 1) > best.lines/2 {
		return '\n' // "pin 3: fuel level, yellow"
	}
	if best.each == 1 && best.sep == ',' && 4*best.lines < filled && !slices.ContainsFunc(lines, func(l string) bool {
		return strings.Contains(l, "\"")
	}) {
		return '\n' // a text in which two sentences have a comma
	}
	return best.sep
}

// outside counts a sign in a line, those between quotation marks left out.
func outside(line string, sep byte) int {
	n, in := 0, false
	for i := range len(line) {
		switch {
		case line[i] == '"':
			in = !in
		case line[i] == sep && !in:
			n++
		}
	}
	return n
}
