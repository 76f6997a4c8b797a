package shape

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/value"
)

// Deleted: what the row is for, its note, or a column of no meaning says that it is gone.
func (b *Block) Deleted(cells []string) bool {
	for i, c := range cells {
		if c == "" || !name.IsDeleted(c) {
			continue
		}
		if i >= len(b.Cols) {
			return true
		}
		switch b.Cols[i].Field {
		case name.FieldKeep, name.FieldNote, name.FieldSignal, name.FieldWire, name.FieldFrom, name.FieldTo, name.FieldColour,
			name.FieldGauge:
			return true
		}
	}
	return false
}

// LastData is the index of the last row that is neither a remark nor a total.
func (b *Block) LastData() int {
	for i := len(b.Rows) - 1; i >= 0; i-- {
		if _, first := b.Rows[i].Filled(); !IsText(b.Rows[i]) && !name.IsTotal(first) {
			return i
		}
	}
	return -1
}

// StartsAgain: rows of one text part the rows of a pin table, and behind a later one the
// cavities begin anew: the first names a connector as well.
func (b *Block) StartsAgain() bool {
	seen := map[string]bool{}
	parted := false
	for _, r := range b.Rows[1:] {
		if IsText(r) {
			parted = true
			continue
		}
		pin := b.Cell(r.Cells, name.FieldPin)
		if pin != "" && seen[pin] {
			return parted
		}
		seen[pin] = true
	}
	return false
}

func (b *Block) Has(fields ...name.Field) bool {
	return slices.ContainsFunc(b.Cols, func(c column) bool { return slices.Contains(fields, c.Field) })
}

// Cell is what a row holds of a field: the first cell of those that have one value, the
// others joined.
func (b *Block) Cell(cells []string, f name.Field) string {
	s, _ := b.CellAt(cells, f)
	return s
}

func (b *Block) CellAt(cells []string, f name.Field) (text string, col int) {
	col = -1
	for i, c := range b.Cols {
		if c.Field != f || i >= len(cells) || cells[i] == "" {
			continue
		}
		if col < 0 {
			text, col = cells[i], i
			if slices.Contains(Once(), f) {
				break
			}
			continue
		}
		text = value.JoinNonEmpty(map[bool]string{true: " ", false: "; "}[b.Cols[col].several], text, cells[i])
	}
	return text, col
}
