package shape

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Deleted reports whether what a row is for, its note, or a column of no meaning says that the
// row is gone.
func (b *Block) Deleted(cells []string) bool {
	for i, c := range cells {
		if c == "" || !signoff.IsDeleted(c) && (b.saysWire(cells) || !signoff.IsRemoved(c)) {
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

// saysWire reports whether a row says where a wire goes, or what wire it is.
func (b *Block) saysWire(cells []string) bool {
	return b.fills(cells, name.FieldTo, name.FieldToPin, name.FieldColour, name.FieldGauge, name.FieldSpec, name.FieldRun)
}

// LastData is the index of the last row that is neither a remark nor a total.
func (b *Block) LastData() int {
	for i := len(b.Rows) - 1; i >= 0; i-- {
		if _, first := b.Rows[i].Filled(); !IsText(b.Rows[i]) && !signoff.IsTotal(first) {
			return i
		}
	}
	return -1
}

// StartsAgain reports whether rows of one text part the rows of a pin table, and behind a later
// one the cavities begin anew: the first names a connector as well.
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

// RowText is a row for a message.
func RowText(cells []string) string {
	return table.Tidy(value.JoinNonEmpty(" ", cells...))
}

// InCavity reports whether a row names a cavity or an end.
func (b *Block) InCavity(cells []string) bool {
	return b.fills(cells, name.FieldPin, name.FieldVia, name.FieldFrom, name.FieldFromPin, name.FieldTo, name.FieldToPin, name.FieldRun,
		name.FieldDevicePin)
}

// fills reports whether a row has something in a column of some fields.
func (b *Block) fills(cells []string, fields ...name.Field) bool {
	for i, c := range b.Cols {
		if i < len(cells) && slices.Contains(fields, c.Field) && !value.IsNothing(cells[i]) {
			return true
		}
	}
	return false
}
