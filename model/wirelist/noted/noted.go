package noted

import (
	"slices"
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Rows are the rows of a table with the lines of notes in them written as the other packages read them; those of any other table are as
// they were. left are those that draw the face of a plug: they are taken out.
func Rows(h shape.Headings, t *table.Table) (rows, left []table.Row) {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows, nil // a person has said where its columns are
	}
	n := notes{rows: t.Rows}
	left = n.sketches(h)
	n.gapped()
	n.labelled()
	n.boxes()
	n.struck()
	n.heads()
	n.letters()
	n.squares()
	n.signs()
	n.remarks()
	n.capitals()
	n.units()
	n.commas()
	n.behind()
	return n.rows, left
}

// notes are the rows of a table; own says that they have been cloned, so that they may be changed.
type notes struct {
	rows []table.Row
	own  bool
}

// texts yields the rows that are a text and no heading, by their number.
func (n *notes) texts(yield func(i int, text string) bool) {
	for i, r := range n.rows {
		if len(r.Cells) == 1 && r.Level == 0 && !r.Struck && r.Cells[0] != "" && !yield(i, r.Cells[0]) {
			return
		}
	}
}

// set puts a text in the place of a row.
func (n *notes) set(i int, text string) {
	if !n.own {
		n.rows, n.own = slices.Clone(n.rows), true
	}
	n.rows[i].Cells = []string{strings.TrimSpace(text)}
}
