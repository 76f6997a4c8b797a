package total

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Below the last wire of a list may stand what somebody measured, looked at or was paid by, in the first two columns:
//
//	Wire | From | Pin | To | Pin | Size        Pin | Signal | Colour
//	1    | X1   | 1   | X2 | 1   | 1.0         1   | Fan    | red
//	2    | X1   | 2   | X2 | 2   | 1.0         2   | Lamp   | white
//	Insulation | 500 MOhm
//	Glands     | tight                         Ordered by telephone | Aunt Dot

// saysRemark reports whether a row below the last wire is such a remark: words where each wire has a number or a cavity, and beside them
// one cell alone, with no cavity. In a table of cavities an empty row or another text parts them off: "Shell | braid" is a row of it.
func saysRemark(b *shape.Block, i int) bool {
	const most = 12 // rows below the wires (no source): a list of thousands is not walked for each of thousands
	if len(b.Rows)-i > most || !isRemarkRow(b, b.Rows[i]) {
		return false
	}
	wires, last := 0, -1 // the row of the last wire
	for k, r := range b.Rows {
		_, first := r.Filled()
		switch {
		case shape.IsText(r), signoff.Is(r), signoff.IsTotal(first):
		case isRemarkRow(b, r):
			if k < i && wires == 0 {
				return false
			}
		case k < i && isShell(b.Cell(r.Cells, name.FieldPin)):
			last = k
		case k > i || !isPlainWire(b, r):
			return false
		default:
			wires++
			last = k
		}
	}
	return wires > 1 && (b.Has(name.FieldFrom) || last+1 < i && !isRemarkRow(b, b.Rows[last+1]) ||
		b.Rows[last+1].Line > b.Rows[last].Line+1)
}

// isRemarkRow reports whether a row has a word without a digit for its wire, its connector or its cavity, and beside it one cell alone: no
// end with a cavity.
func isRemarkRow(b *shape.Block, r table.Row) bool {
	const least = 4 // letters of a word: shorter ones are ids and cavities (no source)
	if n, _ := r.Filled(); n != 2 {
		return false
	}
	if word, near := b.Cell(r.Cells, name.FieldWire), b.Cell(r.Cells, name.FieldFrom); word != "" {
		_, pin, ok := name.SplitEnd(near)
		return near != "" && len(word) >= least && !isNumbered(word) && b.Has(name.FieldTo) && !(ok && name.IsCavity(pin))
	}
	word, pin := b.Cell(r.Cells, name.FieldConnector), b.Cell(r.Cells, name.FieldPin)
	if word == "" {
		word, pin = pin, ""
	}
	return len(word) >= least && !isNumbered(word) && !b.Has(name.FieldFrom) && (pin == "" || !name.IsCavity(pin)) && !isShell(word) &&
		name.StateOf(behind(r)) == name.Used && (pin != "" || b.Cell(r.Cells, name.FieldPin) != "")
}

// isShell reports whether a word in the place of a cavity is the shell of the connector or a screen.
func isShell(word string) bool {
	for _, w := range name.Words(table.Fold(word)) {
		switch w {
		case "shell", "case", "housing", "body", "backshell", "screen", "shield", "braid", "drain", "chassis", "ground", "earth",
			"gehause",
			"schirm", "masse", "boitier", "blindage", "carcasa", "guscio", "schermo", "malla", "tresse", "behuizing", "hus", "obudowa",
			"plast",
			"battery", "power", "supply", "antenna":
			return true
		}
	}
	return name.IsDrainWord(table.Fold(word))
}

// isPlainWire reports whether a row is a wire as lists have them: a number and both ends, or a cavity and two things that it says of it.
func isPlainWire(b *shape.Block, r table.Row) bool {
	if b.Has(name.FieldFrom) {
		return isNumbered(b.Cell(r.Cells, name.FieldWire)) && hasBothEnds(b, r)
	}
	n, _ := r.Filled()
	return name.IsCavity(b.Cell(r.Cells, name.FieldPin)) && (n > 2 || name.StateOf(behind(r)) != name.Used)
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
