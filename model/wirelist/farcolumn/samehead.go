package farcolumn

import (
	"slices"
	"strings"

	"contralay/model/wirelist/block"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// mostSheet is how many rows a sheet may have that is looked through for each table of it: a document, not a data base (no source).
const mostSheet = 2000

// SameHead takes a column for the cavities of the device that heads it where another table of the sheet has a column of that heading, with
// other cavities and the colours or the sizes of their wires: the document goes on with the same board.
//
//	BRK | Drive | Colour      BRK | What  | Remarks
//	2   | PUL+  | brown       10  | Stop  | opens when pressed
//	3   | DIR+  | white       11  | Limit |
func SameHead(cols []shape.Column, prof []column.Profile, b *block.Block, h shape.Headings) {
	if len(b.Head) != 1 || len(b.Table.Rows) > mostSheet || has(cols, prof, name.FieldPin, name.FieldTo, name.FieldToPin, name.FieldFrom,
		name.FieldFromPin, name.FieldRun, name.FieldVia, name.FieldDevicePin, name.FieldConnector, name.FieldNumber, name.FieldWire) {
		return
	}
	rows, sheet := b.Rows, b.Table.Rows
	for i := range prof {
		if !isOpen(cols, prof, i) || !namesDevice(cols, i, "") || !areOfBoard(rows, i) || !oneBeside(cols, prof, i) {
			continue
		}
		for k, r := range sheet {
			at := slices.IndexFunc(r.Cells, func(c string) bool { return strings.EqualFold(c, cols[i].Head) })
			if r.Line != b.Head[0].Line && at >= 0 && len(r.Cells) > 2 && slices.ContainsFunc(r.Cells, func(c string) bool {
				f := h.Words[strings.Join(name.Words(table.Fold(c)), " ")].Field
				return f == name.FieldColour || f == name.FieldGauge
			}) && areOthers(rows, i, sheet[k+1:], at) {
				cols[i].Field, cols[i].Of, cols[i].Guessed = name.FieldPin, shape.DeviceOf(cols[i].Head), true
				return
			}
		}
	}
}

// oneBeside reports whether nothing but one column of names and remarks stand beside a column: figures beside the names are no wires.
func oneBeside(cols []shape.Column, prof []column.Profile, i int) bool {
	names := 0
	for k := range prof {
		p := &prof[k]
		if k == i || p.Filled == 0 || cols[k].Field == name.FieldNote {
			continue
		}
		if names++; !p.Unique() || p.Filled < prof[i].Filled || 2*p.Prose > p.Filled ||
			p.Numbers+p.Currents+p.Lengths+p.Colours+p.Sized > 0 {
			return false
		}
	}
	return names == 1
}

// areOthers reports whether a column of another table, up to the next text, holds two cavities or more, and none of those of this one.
func areOthers(rows []table.Row, i int, others []table.Row, at int) bool {
	seen := map[string]bool{}
	for _, r := range others {
		if shape.IsText(r) || r.Ruled || at >= len(r.Cells) {
			break
		}
		if c := r.Cells[at]; !value.IsNothing(c) {
			seen[c] = true
		}
	}
	return len(seen) > 1 && areOfBoard(others[:min(len(others), len(seen))], at) &&
		cells(rows, i, func(cell string) bool { return !seen[cell] })
}
