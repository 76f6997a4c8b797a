package row

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// partNamedValues gives the colour and the size that stand in brackets behind the names of most rows cells of their own, where the table
// has no column for them: "start (white, 22 AWG)". The colour of a lamp stands behind a few names.
func partNamedValues(b *shape.Block) {
	at := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldSignal })
	if at < 0 || b.Has(name.FieldColour, name.FieldGauge, name.FieldStripe) {
		return
	}
	used, valued := 0, 0
	for _, r := range b.Rows {
		if at >= len(r.Cells) || shape.IsText(r) || value.IsNothing(r.Cells[at]) || name.StateOf(r.Cells[at]) != name.Used {
			continue
		}
		used++
		if _, all := point.ValuesBehind(r.Cells[at]); slices.ContainsFunc(all, point.IsColour) {
			valued++
		}
	}
	if valued < 2 || 4*valued < 3*used {
		return
	}
	wide := len(b.Cols)
	for _, r := range b.Rows {
		wide = max(wide, len(r.Cells))
	}
	b.Cols, b.Rows = slices.Clone(b.Cols), slices.Clone(b.Rows)
	for len(b.Cols) < wide {
		b.Cols = append(b.Cols, shape.Column{Field: name.FieldKeep})
	}
	head := b.Cols[at].Head
	b.Cols = append(b.Cols, shape.Column{Field: name.FieldColour, Head: head}, shape.Column{Field: name.FieldGauge, Head: head})
	for k, r := range b.Rows {
		if at >= len(r.Cells) || shape.IsText(r) {
			continue
		}
		front, all := point.ValuesBehind(r.Cells[at])
		if all == nil {
			continue
		}
		cells := make([]string, wide+2)
		copy(cells, r.Cells)
		cells[at] = front
		for _, v := range all {
			if point.IsColour(v) {
				cells[wide] = v
			} else {
				cells[wide+1] = v
			}
		}
		b.Rows[k].Cells = cells
	}
}
