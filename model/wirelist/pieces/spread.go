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
	if l.onlyTo {
		head = head[1:]
	}
	if all.ids > 0 {
		head = slices.Insert(head, 0, idHead)
	}
	return head
}

// below reports whether what stands above some lines is the near end of each.
func (all lines) below() bool { return all.pins > 0 || all.onlyTo > 0 }

// IsHead reports whether a row is such headings.
func IsHead(r table.Row) bool {
	cells := r.Cells
	if len(cells) > 0 && cells[0] == idHead {
		cells = cells[1:]
	}
	if n := len(heads[""]); len(cells) == n-1 {
		cells = slices.Insert(slices.Clone(cells), 0, "")
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
			} else if len(rows) > 0 && all.below() && headed != nil {
				headed, r.First = nil, true // the next plug
			}
			if texts := nonEmpty(r.Cells); all.asked[r.Line] && len(texts) > 1 {
				r.Cells = []string{strings.Join(texts, ", ")} // "white plug, 2 way" is a text
			}
			rows = append(rows, r)
			continue
		}
		for of := range l.each {
			if head := all.headOf(of); !slices.Equal(head, headed) {
				rows = append(rows, table.Row{Line: r.Line, Cells: head, First: true, Ruled: t.Marked})
				headed = head
			}
			rows = append(rows, all.row(r, of))
		}
	}
	return rows
}

// row is a row with the cells of what it tells.
func (all lines) row(r table.Row, l *line) table.Row {
	r.First, r.Prose, r.Point, r.Gap, r.Drawn = false, false, false, nil, nil
	ends := append(append(nonEmpty([]string{l.pin}), l.ends...), "", "")[:2]
	if l.onlyTo {
		ends = ends[:1]
	}
	r.Cells = nil
	if all.ids > 0 {
		r.Cells = []string{l.id}
	}
	r.Cells = append(append(r.Cells, ends...), l.colour, l.size, l.signal, strings.Join(l.notes, "; "))
	return r
}
