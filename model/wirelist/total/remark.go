package total

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Below the last wire of a list with both ends of each may stand what somebody measured or looked at, in the first two columns:
//
//	Wire | From | Pin | To | Pin | Size
//	1    | X1   | 1   | X2 | 1   | 1.0
//	2    | X1   | 2   | X2 | 2   | 1.0
//	Insulation | 500 MOhm
//	Glands     | tight

// saysRemark reports whether a row below the last wire is such a remark: words where each wire has a number or a letter and a number, and
// beside them the near end alone, which has no cavity where each wire has one.
func saysRemark(b *shape.Block, i int) bool {
	const most = 12 // rows below the wires (no source): a list of thousands is not walked for each of thousands
	if len(b.Rows)-i > most || !isRemarkRow(b, b.Rows[i]) {
		return false
	}
	wires := 0
	for k, r := range b.Rows {
		_, first := r.Filled()
		switch {
		case shape.IsText(r), signoff.Is(r), signoff.IsTotal(first):
		case isRemarkRow(b, r):
			if k < i && wires == 0 {
				return false
			}
		case k > i || !isNumbered(b.Cell(r.Cells, name.FieldWire)) || !hasBothEnds(b, r):
			return false
		default:
			wires++
		}
	}
	return wires > 1
}

// isRemarkRow reports whether a row has a word without a digit for its wire, and beside it one cell alone, a near end without its cavity.
func isRemarkRow(b *shape.Block, r table.Row) bool {
	const least = 3 // letters of a word: shorter ones are ids and cavities (no source)
	if n, _ := r.Filled(); n != 2 {
		return false
	}
	word, near := b.Cell(r.Cells, name.FieldWire), b.Cell(r.Cells, name.FieldFrom)
	if len(word) < least || near == "" || isNumbered(word) || !b.Has(name.FieldTo) {
		return false
	}
	_, pin, ok := name.SplitEnd(near)
	return !(ok && name.IsCavity(pin))
}

// isNumbered reports whether a text has a digit.
func isNumbered(text string) bool { return strings.ContainsAny(text, "0123456789") }

// hasBothEnds reports whether a row says both ends of its wire, and a cavity of the near one.
func hasBothEnds(b *shape.Block, r table.Row) bool {
	near, far := b.Cell(r.Cells, name.FieldFrom), b.Cell(r.Cells, name.FieldTo)
	if value.IsNothing(near) || value.IsNothing(far) {
		return false
	}
	if b.Has(name.FieldFromPin) {
		return !value.IsNothing(b.Cell(r.Cells, name.FieldFromPin))
	}
	_, pin, ok := name.SplitEnd(near)
	return ok && name.IsCavity(pin)
}
