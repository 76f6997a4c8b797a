package reading

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// partedFirst reads a column of terminals that each name their strip, beside a column of devices with their cavities behind it: the
// terminals are the one end, and the devices the other.
//
//	Terminal | Device | Contact | What
//	TB1-1    | Pump 1 | L       | Pump live
func partedFirst(l *look) []shape.Column {
	if l.Has(l.Cols, name.FieldRun, name.FieldVia) {
		return nil
	}
	at := slices.IndexFunc(l.Cols, func(c shape.Column) bool {
		return !c.Given && l.Heads.Words[table.Fold(c.Head)].Field == name.FieldPin
	})
	if at < 0 || !l.AllParted(at) {
		return nil
	}
	for k := at + 2; k < len(l.Cols); k++ {
		c, device := &l.Cols[k], &l.Cols[k-1]
		isPin := l.Heads.Words[table.Fold(c.Head)].Field == name.FieldPin || l.EndsInPin(c.Head)
		if !isPin || c.Given || device.Given || !l.holdsThings(k-1) || l.Prof[k].Filled == 0 || l.Prof[k-1].Filled < l.Prof[k].Filled {
			continue
		}
		cols := slices.Clone(l.Cols)
		for _, i := range []int{at, k - 1, k} {
			cols[i].Field, cols[i].Of, cols[i].InCell = name.FieldKeep, "", false
		}
		if l.Has(cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldPin, name.FieldConnector) {
			return nil
		}
		cols[at].Field, cols[k-1].Field, cols[k].Field = name.FieldFrom, name.FieldTo, name.FieldToPin
		return cols
	}
	return nil
}

// holdsThings reports whether a column that nobody knows, or that is known for ends or connectors, holds names and no values.
func (l *look) holdsThings(i int) bool {
	c, p := &l.Cols[i], &l.Prof[i]
	return slices.Contains([]name.Field{name.FieldKeep, name.FieldTo, name.FieldFrom, name.FieldConnector}, c.Field) && c.Head != "" &&
		p.Filled > 0 && p.Numbers == 0 && p.Colours == 0 && p.Sized == 0 && 2*p.Prose <= p.Filled && !name.IsOtherHead(c.Head)
}
