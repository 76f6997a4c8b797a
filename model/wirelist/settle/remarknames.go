package settle

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// remarkNames takes the remarks of a table that has no names for them, where every row, or nine in ten, has one of its own, short and of
// no value: what each wire is for is all that was to be said of it.
//
//	Pad | Part | Lug | Wire   | Remark
//	W1  | SW1  | T   | yellow | pitch left
//	W2  | SW1  | N   | white  | pitch right
func remarkNames(l *Look) {
	if len(l.Src.Head) == 0 || l.Has(l.Cols, name.FieldSignal, name.FieldWire) || l.Holds(l.Cols, name.FieldColour, name.FieldGauge) < 0 ||
		!l.Has(l.Cols, name.FieldFrom, name.FieldRun, name.FieldFromPin, name.FieldPin) {
		return
	}
	var of *shape.Column
	for i := range l.Cols {
		c, p := &l.Cols[i], &l.Prof[i]
		if c.Field == name.FieldKeep && p.Filled > 0 && 2*p.Words > p.Filled && p.Distinct > 1 && 2*p.Cavities < p.Filled {
			return // it could be the names
		}
		if c.Field != name.FieldNote || c.Given || p.Filled == 0 {
			continue
		}
		if of != nil || 10*p.Filled < 9*column.Data(l.Src.Rows) || p.Filled < 3 || 5*p.Distinct < 4*p.Filled ||
			4*(p.Prose+p.States) > p.Filled ||
			p.Numbers+p.Colours+p.Sizes+p.Sized+p.Specs+p.Lengths+p.Currents+p.Ends > 0 || saysState(c.Head) {
			return
		}
		of = c
	}
	if of != nil {
		of.Field, of.Against = name.FieldSignal, true
	}
}

// saysState reports whether a heading of remarks is of what was done, not of what is.
func saysState(head string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(head)), func(w string) bool { return w == "status" || w == "state" || w == "info" })
}
