package table

import (
	"fmt"
	"slices"
	"strings"
)

// Lists that were copied out of a letter or a terminal have no sign between their cells:
// columns stand under each other, two blanks or more apart.

// field is one cell of such a line and where it stands, in characters.
type field struct {
	text     string
	from, to int
}

// gapped parts a line at two blanks and more, and at tabs.
func gapped(line string) (all []field) {
	runes := []rune(line)
	blank := func(i int) bool { return i >= len(runes) || runes[i] == ' ' || runes[i] == '\t' }
	for i := 0; i < len(runes); {
		if blank(i) {
			i++
			continue
		}
		end := i
		for end < len(runes) && !(blank(end) && blank(end+1)) {
			end++
		}
		all = append(all, field{strings.TrimSpace(string(runes[i:end])), i, end})
		i = end
	}
	return all
}

// inColumns reports whether no sign parts the cells of the text and most of its lines have gaps.
func inColumns(text string) bool {
	if strings.ContainsAny(text, ";\t|") {
		return false
	}
	lines, with, signs := 0, 0, 0
	for l := range strings.SplitSeq(text, "\n") {
		if lines == 200 {
			break
		}
		if strings.TrimSpace(l) == "" {
			continue
		}
		lines++
		if len(gapped(l)) > 2 {
			with++
		}
		if outside(l, ',') > 1 {
			signs++
		}
	}
	return with > 1 && 2*with > lines && 2*signs < lines
}

// readColumns reads such a text. The line of its headings gives the columns; a cell of another line is of the column that it
// stands under most, or between whose edges it stands where a rule gives them.
func readColumns(name, text string, l Limits) ([]Table, error) {
	t := Table{File: name, Comma: true}
	count := counter{l: l}
	heads, at, tight := headsOf(text)
	if heads == nil {
		return readSeparated(name, text, l)
	}
	n := 0
	for line := range strings.SplitSeq(text, "\n") {
		n++
		if len(line) > l.CellBytes {
			return nil, &Error{Place{File: name, Row: n}, fmt.Sprintf("has %d bytes", len(line)),
				fmt.Sprintf("lines of up to %d", l.CellBytes)}
		}
		cells := withoutArrows(gapped(line))
		if len(cells) == 0 || strings.Trim(line, "-=_ ") == "" {
			continue // a rule under the headings
		}
		row := Row{Line: n}
		switch cut := cutAt(heads, line); {
		case len(cells) == 1 && (n < at || cells[0].from < heads[0].to), n < at && len(cells) == 2:
			row.Cells = []string{marked(cells[0].text)}
			if len(cells) == 2 {
				row.Cells = append(row.Cells, marked(cells[1].text))
			}
		case n < at: // a title with gaps in it
			row.Cells = []string{marked(strings.Join(strings.Fields(line), " "))}
		case n == at:
			for _, c := range heads {
				row.Cells = append(row.Cells, marked(c.text))
			}
		case tight && cut != nil:
			row.Cells = cut
		default:
			row.Cells = under(heads, cells)
		}
		if says, allowed := count.row(len(row.Cells)); says != "" {
			return nil, &Error{Place{File: name, Row: n}, says, allowed}
		}
		t.Rows = append(t.Rows, row)
	}
	return []Table{t}, nil
}

// withoutArrows leaves out the cells between others that draw the wire, "1 ------- 9".
func withoutArrows(cells []field) []field {
	for i, c := range cells { // "----> X1-4"
		if text := strings.TrimLeft(c.text, "-=<>—–→─ "); i > 0 && text != "" && (strings.HasPrefix(c.text, "--") ||
			strings.HasPrefix(c.text, "->") || strings.HasPrefix(c.text, "→")) {
			cells[i].text = text
		}
	}
	drawn := func(c field) bool { return len(c.text) > 2 && strings.Trim(c.text, "-=<>—–→─") == "" }
	other := 0
	for _, c := range cells {
		if !drawn(c) {
			other++
		}
	}
	if other < 2 {
		return cells
	}
	return slices.DeleteFunc(cells, drawn)
}

// under gives each cell its column: that from whose head to the next it has most of its
// characters. What stands in one column is joined.
func under(heads, cells []field) []string {
	out := make([]string, len(heads))
	for _, c := range cells {
		best, most := 0, -1
		for k, h := range heads {
			from, to := h.from, c.to
			if k == 0 {
				from = 0
			}
			if k+1 < len(heads) {
				to = heads[k+1].from
			}
			if in := min(c.to, to) - max(c.from, from); in > most {
				best, most = k, in
			}
		}
		out[best] = marked(out[best] + " " + c.text)
	}
	return out
}
