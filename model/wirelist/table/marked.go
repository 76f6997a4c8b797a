package table

import (
	"fmt"
	"strings"

	"contralay/model/wirelist/icons"
	"contralay/model/wirelist/markup"
)

// hasMarkup reports whether a text is a page of HTML, or has a table of a language for texts that are shown.
func hasMarkup(name, text string) bool {
	t, ok := markup.Read(text)
	return ok && (len(t.Tables) > 0 || markup.IsPage(name, text))
}

// markedUp are the lines of a text as Markdown has them, and the tables of other languages in it, each at its first line.
func markedUp(name, text string, l Limits) (string, map[int]setIn, error) {
	t, ok := markup.Read(text)
	if !ok {
		return text, nil, nil
	}
	all := map[int]setIn{}
	for at, of := range t.Tables {
		in := setIn{n: of.Lines}
		for _, r := range of.Rows {
			row := Row{Line: r.Line, First: r.First, Apart: r.First, Ruled: r.Head, Made: r.Made, Prose: r.Prose, Level: r.Level}
			for _, c := range r.Cells {
				if len(c) > l.CellBytes {
					return "", nil, &Error{Place{File: name, Row: r.Line}, fmt.Sprintf("has a cell of %d bytes", len(c)),
						fmt.Sprintf("cells of up to %d", l.CellBytes)}
				}
				row.Cells = append(row.Cells, icons.Without(marked(c)))
			}
			row.strike()
			in.rows = append(in.rows, row)
		}
		all[at] = in
	}
	return strings.Join(t.Lines, "\n"), all, nil
}
