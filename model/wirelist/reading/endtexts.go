package reading

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// endTexts reads two columns beside each other that nobody knows and whose cells are ends in plain words, a device and its place, in a
// table that has values of wires or their cables and says no other end. Nothing but the cells says so, and a person should look.
//
//	Cable | mm2 | Dimmer  | Bar outlet
//	M1    | 2.5 | Dim 1 L | Bar 1 L
//	M1    | 2.5 | Dim 1 N | Bar 1 N
func endTexts(l *look) []shape.Column {
	if len(l.Src.Head) == 0 || l.AnotherPin(-1) || l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin,
		name.FieldRun, name.FieldVia, name.FieldDevicePin) || l.Holds(l.Cols, name.FieldGauge, name.FieldColour, name.FieldCable) < 0 {
		return nil
	}
	at := column.EndTexts(l.Src.Rows, len(l.Cols))
	if at < 0 || l.Holds(l.Cols, name.FieldColour, name.FieldCable) < 0 && !l.letteredPlaces(at) {
		return nil
	}
	cols := slices.Clone(l.Cols)
	for k, f := range []name.Field{name.FieldFrom, name.FieldTo} {
		c := &cols[at+k]
		w := name.Words(table.Fold(c.Head))
		if c.Given || len(w) == 0 || c.Field != name.FieldKeep && c.Field != name.FieldConnector || name.IsMeasure(w) || name.IsRemark(w) {
			return nil
		}
		c.Field, c.Guessed = f, true
	}
	return cols
}

// letteredPlaces reports whether half of the texts of two columns or more end in a letter or a pole, as places do and the numbers of
// rooms do not.
func (l *look) letteredPlaces(at int) bool {
	n, lettered := 0, 0
	for _, r := range l.Src.Rows[:min(len(l.Src.Rows), column.MostLooked)] {
		for i := at; i <= at+1 && i < len(r.Cells) && !shape.IsText(r); i++ {
			if r.Cells[i] == "" {
				continue
			}
			n++
			if last := r.Cells[i][strings.LastIndexByte(r.Cells[i], ' ')+1:]; strings.Trim(last, "0123456789") != "" {
				lettered++
			}
		}
	}
	return n > 0 && 2*lettered >= n
}
