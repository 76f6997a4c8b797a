package reading

import (
	"slices"
	"strings"

	"contralay/model/wirelist/bothends"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// coloursTo reads the wires of a thing, told by their colours, and the pads of the board that they go to: the heading names both with an
// arrow, and the second column is headed by the second.
//
//	### Load cells -> amp board
//	Wire  | Amp
//	red   | E+
//	black | E-
func coloursTo(l *look) []shape.Column {
	if len(l.Src.Head) != 1 || l.Has(l.Cols, name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldPin, name.FieldVia,
		name.FieldDevicePin, name.FieldFuse, name.FieldTo, name.FieldNumber) {
		return nil
	}
	colour := l.Holds(l.Cols, name.FieldColour)
	if colour < 0 || l.Cols[colour].Given {
		return nil
	}
	p := &l.Prof[colour]
	far := slices.IndexFunc(l.Cols, func(c shape.Column) bool { return bothends.HeadsFar(c.Head, l.Src.Path, l.Src.Titles) })
	if p.Filled < 2 || !p.All(p.Colours) || 2*p.Distinct <= p.Filled || far < 0 || far == colour || l.Cols[far].Given {
		return nil
	}
	if q := &l.Prof[far]; q.Filled < p.Filled || q.Colours > 0 || q.Sized > 0 || !q.Unique() || !l.arePads(far) {
		return nil
	}
	for i, c := range l.Cols {
		if i != far && i != colour && c.Field == name.FieldKeep && c.Head != "" && l.Prof[i].Filled > 0 && l.HeadsDevice(i) {
			return nil // it could be the cavities
		}
	}
	cols := slices.Clone(l.Cols)
	cols[colour].Alone = true
	cols[far].Field, cols[far].Of, cols[far].Headed = name.FieldToPin, cols[far].Head, true
	return cols
}

// arePads reports whether each cell of a column is a short word, with what stands in brackets behind it.
func (l *look) arePads(i int) bool {
	const longest = 10 // bytes of the name of a pad (no source)
	return !slices.ContainsFunc(l.Src.Rows, func(r table.Row) bool {
		if i >= len(r.Cells) || r.Cells[i] == "" || shape.IsText(r) {
			return false
		}
		pad, _, _ := strings.Cut(r.Cells[i], " (")
		return len(pad) > longest || strings.Contains(pad, " ")
	})
}
