package reading

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// leads reads the points of a list that tell both ends of a wire each; package block has parted them.
//
//   - FC 5V -> GPS VCC (red)
func leads(l *look) []shape.Column {
	if !l.Src.Runs {
		return nil
	}
	fields := []name.Field{name.FieldFrom, name.FieldFromPin, name.FieldTo, name.FieldToPin, name.FieldColour, name.FieldGauge,
		name.FieldNote, name.FieldSignal, name.FieldWire, name.FieldLength}
	var cols []shape.Column
	for _, f := range fields {
		cols = append(cols, shape.Column{Field: f})
	}
	return cols
}
