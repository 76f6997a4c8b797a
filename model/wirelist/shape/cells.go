package shape

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Has reports whether the block has a column of one of some fields.
func (b *Block) Has(fields ...name.Field) bool {
	return slices.ContainsFunc(b.Cols, func(c Column) bool { return slices.Contains(fields, c.Field) })
}

// Cell is what a row holds of a field: the first cell of those that have one value, the
// others joined.
func (b *Block) Cell(cells []string, f name.Field) string {
	s, _ := b.CellAt(cells, f)
	return s
}

// CellAt is what Cell gives, and the index of the column it begins in; −1 where no cell of the
// field is filled.
func (b *Block) CellAt(cells []string, f name.Field) (text string, col int) {
	col = -1
	var parts []string
	for i := range min(len(b.Cols), len(cells)) {
		c := &b.Cols[i]
		if c.Field != f || cells[i] == "" {
			continue
		}
		if c.Group {
			parts = append(parts, cells[i])
			continue
		}
		if col < 0 {
			text, col = cells[i], i
			if isOnce(f) {
				break
			}
			continue
		}
		if table.Fold(text) == table.Fold(cells[i]) {
			continue
		}
		text = value.JoinSaid(map[bool]string{true: " ", false: "; "}[b.Cols[col].several], text, cells[i])
	}
	if len(parts) > 0 {
		text = value.JoinNonEmpty(" ", append([]string{text}, parts...)...)
	}
	return text, col
}

// Once lists the fields that have one value in a row.
func Once() []name.Field { return once[:] }

// once is never written to.
var once = [...]name.Field{name.FieldWire, name.FieldPin, name.FieldFromPin, name.FieldToPin, name.FieldGauge, name.FieldSpec,
	name.FieldColour, name.FieldStripe, name.FieldLength, name.FieldCurrent, name.FieldFuse}

func isOnce(f name.Field) bool { return slices.Contains(once[:], f) }

// IsPole reports whether a dash that is all of a cell is the minus pole of a device, and does not say that the cell is empty:
// another cell of its column is the plus pole.
func (b *Block) IsPole(col int) bool {
	return col >= 0 && slices.ContainsFunc(b.Rows, func(r table.Row) bool {
		for i, c := range r.Cells {
			if c == "+" && (i == col || i < len(b.Cols) && col < len(b.Cols) && isCavityColumn(b.Cols[i].Field) &&
				isCavityColumn(b.Cols[col].Field)) {
				return true
			}
		}
		return false
	})
}

// isCavityColumn reports whether a field is of the cavities of an end.
func isCavityColumn(f name.Field) bool {
	return f == name.FieldPin || f == name.FieldFromPin || f == name.FieldToPin
}

// Beside is what a row holds in columns that no value is read from: the second of two of
// a kind, where it says something else than the first, and those that were spared.
func (b *Block) Beside(cells []string) (all []string) {
	for i, c := range b.Cols {
		if i >= len(cells) || cells[i] == "" {
			continue
		}
		if c.Field == name.FieldUnit && !isUnitWord(cells[i]) {
			all = append(all, value.JoinNonEmpty(": ", c.Head, cells[i]))
		}
		if !isOnce(c.Field) {
			continue
		}
		first := i // of the columns of its kind that hold something
		for k := range i {
			if b.Cols[k].Field == c.Field && cells[k] != "" {
				first = k
				break
			}
		}
		if first < i && table.Fold(cells[first]) != table.Fold(cells[i]) && !value.IsNothing(cells[i]) {
			all = append(all, value.JoinNonEmpty(": ", c.Head, cells[i]))
		}
	}
	return all
}

// SecondNames counts the cells of a row that are second names of its cavity, which say nothing of a wire.
func (b *Block) SecondNames(cells []string) (n int) {
	for i, c := range b.Cols {
		if c.Alias && i < len(cells) && !value.IsNothing(cells[i]) {
			n++
		}
	}
	return n
}

// PinsOf is the device that the heading of the cavities names, "ECU" of "ECU pin"; "" where it names none
// or a word for any connector.
func (b *Block) PinsOf() string {
	for _, c := range b.Cols {
		if (c.Field == name.FieldPin || c.Field == name.FieldVia) && c.Of != "" {
			if name.IsGeneric(c.Of) {
				return ""
			}
			return c.Of
		}
	}
	return ""
}

// PinsGuessed reports whether the heading of the cavities is a word that nobody knows and that does not say it is of them.
func (b *Block) PinsGuessed() bool {
	return slices.ContainsFunc(b.Cols, func(c Column) bool { return c.Field == name.FieldPin && c.Of != "" && c.Vague })
}

// InCells reports whether the cells of the cavities name their connectors.
func (b *Block) InCells() bool {
	return slices.ContainsFunc(b.Cols, func(c Column) bool { return c.InCell })
}
