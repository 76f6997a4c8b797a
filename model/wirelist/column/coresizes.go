package column

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// SettleCoreSizes finds the column of the kinds of cables that says the size of their cores within, in a table whose rows have no
// size of their own and stand below the name of a cable.
//
//	Cable | Type        | Core | From | To
//	W1    | LIYCY 4x0.5 | 1    | X1:3 | M1:U
func SettleCoreSizes(b *shape.Block) {
	if !b.Has(name.FieldCable) {
		return
	}
	for i := range b.Cols {
		if c := &b.Cols[i]; c.Field == name.FieldGauge {
			switch filled, sized, single := coreSizes(b, i); {
			case sized > 0 && sized == filled && !single:
				c.Field, c.CoreSize = name.FieldKeep, true // "LIYCY 4x0.5" below Size
				return
			case filled > 0:
				return
			}
		}
	}
	for i := range b.Cols {
		c := &b.Cols[i]
		switch c.Field {
		case name.FieldKeep, name.FieldNote, name.FieldSpec, name.FieldCable:
		default:
			continue
		}
		filled, sized, _ := coreSizes(b, i)
		if sized > 0 && 2*sized >= filled {
			c.CoreSize = true
			return
		}
	}
}

// CoreSizeOf is the size that the kind of the cable of a row says of its cores; the text stays where it is kept.
func CoreSizeOf(b *shape.Block, cells []string) string {
	for i, c := range b.Cols {
		if c.CoreSize && i < len(cells) {
			return value.CoreSize(cells[i], b.Mark)
		}
	}
	return ""
}

// coreSizes counts the cells of a column, and those that say the size of the cores of a cable; single reports whether one is the size of a
// single wire.
func coreSizes(b *shape.Block, i int) (filled, sized int, single bool) {
	for _, r := range b.Rows {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) || value.IsDitto(r.Cells[i]) {
			continue
		}
		filled++
		if value.CoreSize(r.Cells[i], b.Mark) != "" {
			sized++
		}
		if g, ok := value.ParseGauge(r.Cells[i], value.BareAWG, b.Mark); ok && !g.IsCable() {
			single = true
		}
	}
	return filled, sized, single
}
