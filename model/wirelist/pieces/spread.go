package pieces

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// heads are the headings of the table, and those of lists with German short forms of colours, which count below German headings; of
// lines that begin with a cavity the first is pinHead, of those with an id of their own idHead stands before it.
var heads = map[string][]string{
	"":   {"From", "To", "Colour", "Size", "Signal", "Note"},
	"de": {"Von", "Nach", "Farbe", "Querschnitt", "Signal", "Bemerkung"},
}

const (
	pinHead = "Pin"
	idHead  = "Wire"
)

// headOf are the headings above a line.
func (all lines) headOf(l *line) []string {
	head := slices.Clone(heads[all.lang])
	if l.pin != "" {
		head[0] = pinHead
	}
	if all.ids > 0 {
		head = slices.Insert(head, 0, idHead)
	}
	return head
}

// IsHead reports whether a row is such headings.
func IsHead(r table.Row) bool {
	cells := r.Cells
	if len(cells) > 0 && cells[0] == idHead {
		cells = cells[1:]
	}
	return len(cells) > 0 && (slices.Equal(cells[1:], heads[""][1:]) || slices.Equal(cells[1:], heads["de"][1:]))
}

// spread puts the cells of the lines in the place of their rows, with headings above the first of each run; a line that says a size
// or a colour and nothing else stays as a heading between them.
func (all lines) spread(t *table.Table) (rows []table.Row) {
	var headed []string
	for _, r := range t.Rows {
		l := all.of[r.Line]
		if l == nil {
			if r.Level > 0 {
				headed = nil
			} else if g := groupOf(strings.Join(nonEmpty(r.Cells), "\t")); g != "" {
				r.Cells = []string{g}
			} else if len(rows) > 0 && all.pins > 0 && headed != nil {
				headed, r.First = nil, true // the next plug
			}
			if texts := nonEmpty(r.Cells); all.pins > 0 && len(texts) > 1 {
				r.Cells = []string{strings.Join(texts, ", ")} // "white plug, 2 way"
			}
			rows = append(rows, r)
			continue
		}
		head := all.headOf(l)
		if !slices.Equal(head, headed) {
			rows = append(rows, table.Row{Line: r.Line, Cells: head, First: true, Ruled: t.Marked})
			headed = head
		}
		r.First, r.Prose, r.Point, r.Gap, r.Drawn = false, false, false, nil, nil
		ends := append(append(nonEmpty([]string{l.pin}), l.ends...), "", "")
		r.Cells = nil
		if all.ids > 0 {
			r.Cells = []string{l.id}
		}
		r.Cells = append(r.Cells, ends[0], ends[1], l.colour, l.size, l.signal, strings.Join(l.notes, "; "))
		rows = append(rows, r)
	}
	return rows
}
