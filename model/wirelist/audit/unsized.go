package audit

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// unsized names the columns of sizes with cells that state one which is not read, and their rows: every cell with a number, and where
// none of the column is read every cell that says something.
//
//	Size:  44/.012        Size:  heavy
func (a *auditor) unsized(t *Table) {
	cols := map[int]bool{}
	var rows []table.Row
	for i, c := range t.Cols {
		if c.Field != name.FieldGauge || t.Points {
			continue
		}
		read := 0
		var numbers, said []table.Row
		for _, r := range t.Rows {
			if i >= len(r.Cells) || !statesSize(r.Cells[i]) || a.row(t, r).wires == nil {
				continue
			}
			switch {
			case slices.ContainsFunc(a.row(t, r).items, func(it *draft.Item) bool {
				return it.Gauge.Size != "" || it.Gauge.IsCable() || it.Gauge.Spec != "" || len(it.Gauge.Colour) > 0
			}):
				read++
			case value.HasDigit(r.Cells[i]):
				numbers = append(numbers, r)
			default:
				said = append(said, r)
			}
		}
		if read == 0 {
			numbers = append(numbers, said...)
		}
		if cols[i] = len(numbers) > 0; cols[i] {
			rows = append(rows, numbers...)
		}
	}
	a.doubt("sizes that are not read", t.At, heads(t, cols), "kept in the notes; write them as 22 AWG or 0.5 mm²", rows)
}

// statesSize reports whether a cell of a column of sizes says one: it is no dash, no question, and does not refer to something else.
func statesSize(cell string) bool {
	folded := table.Fold(strings.TrimSpace(cell))
	if value.IsNothing(cell) || value.IsNotApplicable(cell) || value.IsDitto(cell) || strings.HasSuffix(folded, "?") ||
		words.RefersTo(folded) || words.LeavesOpen(folded) || name.StateOf(cell) != name.Used {
		return false
	}
	return strings.IndexFunc(folded, func(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }) >= 0
}
