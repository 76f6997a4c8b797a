package settle

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// endsInPlaceOfNumbers takes a column headed as a number or a reference for the cavities where each of its cells names a
// connector and a cavity of it, and no other column says where a wire begins.
//
//	Ref  | Function | Goes to
//	J4-1 | Master   | Bus bar
//	J4-2 | Ground   | Block
func (l endColumns) endsInPlaceOfNumbers() {
	if len(l.Src.Head) == 0 || l.AnotherPin(-1) || l.Has(l.Cols, name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldConnector) {
		return
	}
	for i := range l.Cols {
		c := &l.Cols[i]
		if c.Given || c.Field != name.FieldNumber && c.Field != name.FieldWire && c.Field != name.FieldKeep || !l.AllParted(i) ||
			!l.FewConnectors(i) || c.Field == name.FieldKeep && column.Addresses(l.Src.Rows, i) {
			continue
		}
		c.Field, c.InCell = name.FieldPin, true
		return
	}
}

// FewConnectors reports whether the cells of a column name several cavities of each of their connectors.
func (l *Look) FewConnectors(i int) bool {
	of, n := map[string]bool{}, 0
	for _, r := range l.Src.Rows[:min(len(l.Src.Rows), column.MostLooked)] {
		if i < len(r.Cells) && r.Cells[i] != "" && !value.IsDots(r.Cells[i]) && !shape.IsText(r) {
			connector, _, _ := name.SplitEnd(r.Cells[i])
			of[connector] = true
			n++
		}
	}
	return n >= 2*len(of) && n > 2
}
