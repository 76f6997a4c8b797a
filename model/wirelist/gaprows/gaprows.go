package gaprows

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// leastRows is how many lines stand below the headings where that is no chance (no source).
const leastRows = 2

// Rows are the rows of a sheet, those of such tables in two cells.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	rows := t.Rows
	if h.HeadLine() > 0 || h.Numbered() {
		return rows // a person has said where its columns are
	}
	copied := false
	for i := 0; i+leastRows < len(rows); i++ {
		if rows[i+1].Gap == nil {
			continue // most rows
		}
		head := headOf(h, rows[i])
		if head == nil {
			continue
		}
		pairs := pairsBelow(rows, i)
		if len(pairs) < leastRows || !areRows(h, head, pairs) {
			continue
		}
		if !copied {
			rows, copied = slices.Clone(rows), true
		}
		for k, cells := range append([][]string{head}, pairs...) {
			r := &rows[i+k]
			r.Cells, r.First, r.Ruled = cells, t.Marked && k == 0, t.Marked && k == 0
			r.Level, r.Prose, r.Point, r.Deep, r.Gap, r.Drawn = 0, false, false, 0, nil, nil
		}
		i += len(pairs)
	}
	return rows
}

// headOf are the two headings of a line: those that a gap parts, or those that its words are, where a gap parts the lines below alone.
func headOf(h shape.Headings, r table.Row) []string {
	is := func(a, b string) bool { return h.IsHead(table.Row{Cells: []string{a, b}}) }
	if len(r.Cells) != 1 || r.Level > 0 || r.Point {
		return nil
	}
	if r.Gap != nil {
		if is(r.Gap[0], r.Gap[1]) || h.IsPinHeading(r.Gap[0]) && areWords(r.Gap[1]) {
			return []string{r.Gap[0], r.Gap[1]}
		}
		return nil
	}
	w := strings.Fields(r.Cells[0])
	if len(w) != 2 || !is(w[0], w[1]) || strings.ContainsAny(r.Cells[0], ":.,") {
		return nil
	}
	return w
}

// areWords reports whether a text can be a heading that nobody knows, "Voltage": a word or two and no figure.
func areWords(text string) bool {
	const longest = 24 // bytes (no source)
	return len(text) <= longest && len(strings.Fields(text)) < 3 && !strings.ContainsAny(text, "0123456789,.:;()")
}

// pairsBelow are the cells of the lines right below the headings in row i, to the end of their paragraph; nil where one of them is none.
func pairsBelow(rows []table.Row, i int) (pairs [][]string) {
	for k := i + 1; k < len(rows) && rows[k].Line == rows[k-1].Line+1; k++ {
		r := rows[k]
		switch {
		case len(r.Cells) != 1 || r.Level > 0:
			return nil
		case r.Gap != nil:
			pairs = append(pairs, []string{r.Gap[0], r.Gap[1]})
		case name.IsCavity(r.Cells[0]):
			pairs = append(pairs, []string{r.Cells[0], ""})
		default:
			return nil
		}
	}
	return pairs
}

// areRows reports whether the cells below a heading of cavities are cavities, each once, and those of every table no sentences.
func areRows(h shape.Headings, head []string, pairs [][]string) bool {
	const longest = 60 // bytes of a cell (no source)
	seen, valued := map[string]bool{}, 0
	pins := h.IsPinHeading(head[0])
	for _, p := range pairs {
		if len(p[0]) > longest || len(p[1]) > longest || strings.HasSuffix(p[1], ".") && strings.Count(p[1], " ") > 3 {
			return false
		}
		if pins && (seen[p[0]] || !name.IsCavities(p[0])) {
			return false
		}
		seen[p[0]] = true
		if tellsValues(p[1]) {
			valued++
		}
	}
	return 3*valued < len(pairs) // else package alike takes them apart
}

// tellsValues reports whether a cell says a colour or a size behind something else: "Up (red)", "Down, blue, 0.5 mm²".
func tellsValues(cell string) bool {
	pieces := strings.FieldsFunc(strings.ReplaceAll(cell, " - ", ";"), func(r rune) bool { return strings.ContainsRune("(),;", r) })
	for k, p := range pieces {
		p = strings.TrimSpace(p)
		if _, colour := value.ParseColour(p, ""); k > 0 && (colour && len(p) > 2 || value.SizeWithin(p, value.MarkUnknown) != "") {
			return true
		}
	}
	return false
}
