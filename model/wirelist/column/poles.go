package column

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// A row may tell the wires of one circuit together, a cavity and a colour for each: "1 / 14" and "green / white" are two wires, of
// one colour each. The headings say so, or every row does.
//
//	Channel | Pins (+ / -) | Colours (+ / -)
//	Inlet   | 1 / 14       | green / white
//	Outlet  | 2 / 15       | green / white

// SettlePoles finds such columns of a block.
func SettlePoles(b *shape.Block) {
	pin, colour := fieldAt(b, name.FieldPin), fieldAt(b, name.FieldColour)
	if pin < 0 || b.Cols[pin].InCell || b.Cols[pin].Slashed {
		return
	}
	poles := polesIn(b.Cols[pin].Head)
	if len(poles) == 0 && colour >= 0 {
		poles = polesIn(b.Cols[colour].Head)
	}
	rows := 0 // that name several cavities
	each := colour >= 0
	for _, r := range b.Rows {
		if shape.IsText(r) || pin >= len(r.Cells) || value.IsNothing(r.Cells[pin]) ||
			name.StateOf(b.Cell(r.Cells, name.FieldSignal)) == name.Blank {
			continue
		}
		n := len(name.SplitPins(r.Cells[pin]))
		if n > 1 {
			if rows++; len(poles) > 0 && n != len(poles) {
				return // the heading says something else
			}
		}
		if colour < 0 || colour >= len(r.Cells) || value.IsNothing(r.Cells[colour]) {
			continue
		}
		each = each && strings.Trim(r.Cells[colour], "0123456789/, ") != "" &&
			len(value.ColoursOf(r.Cells[colour], b.Lang, value.PartsColours)) == n
	}
	if rows == 0 || len(poles) == 0 && (!each || rows < 2) {
		return
	}
	b.Poles, b.EachColour = poles, each
}

// fieldAt is the first column of a field; −1 where there is none.
func fieldAt(b *shape.Block, f name.Field) int {
	for i, c := range b.Cols {
		if c.Field == f {
			return i
		}
	}
	return -1
}

// polesIn are the poles that a heading names, "+" and "-" of "Pins (+ / -)"; none where it names none.
func polesIn(head string) (poles []string) {
	_, in, _ := strings.Cut(head, "(")
	in, ok := strings.CutSuffix(strings.TrimSpace(in), ")")
	if !ok {
		_, in, ok = strings.Cut(strings.TrimSpace(head), " ")
	}
	if !ok || !strings.ContainsAny(in, "/,&") {
		return nil
	}
	const longest = 8 // letters of a pole (no source)
	for p := range strings.FieldsFuncSeq(in, func(r rune) bool { return strings.ContainsRune("/,&", r) }) {
		switch p = strings.TrimSpace(p); p {
		case "−", "–":
			p = "-"
		}
		if p == "" || len(p) > longest || strings.Contains(p, " ") {
			return nil
		}
		switch table.Fold(p) {
		case "pin", "pins", "no", "nr", "way", "ways", "cavity", "terminal", "from", "to", "in", "out", "plug", "socket", "male", "female",
			"a", "b":
			return nil // the two sides of a connector, or two words for a cavity
		}
		poles = append(poles, p)
	}
	if len(poles) < 2 {
		return nil
	}
	return poles
}
