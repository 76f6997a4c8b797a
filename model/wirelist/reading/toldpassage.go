package reading

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/words"
)

// toldPassage reads a column for each of three devices, of which the middle one is a connector that wires go through: its heading says so,
// or a text above the table. Each wire goes from the first through it to the third.
//
//	The loom passes bulkhead BH1.
//	Signal | Head J3 | BH1 | Base J7
//	Focus  | G       | 9   | 14
func toldPassage(l *look) []shape.Column {
	if len(l.Src.Rows) < 2 || len(l.Cols) < 3 {
		return nil
	}
	cols := wide(l)
	var of []int
	for i, c := range cols {
		if c.Field == name.FieldDevicePin {
			of = append(of, i)
		}
	}
	if len(of) != 3 {
		return nil
	}
	head := cols[of[1]].Head
	if device := column.PassageOf(head); !words.SaysPassage(head) && !(name.IsDesignator(device) && l.tellsPassage(device)) {
		return nil
	}
	for k, f := range []name.Field{name.FieldFromPin, name.FieldVia, name.FieldToPin} {
		if cols[of[k]].Given {
			return nil
		}
		cols[of[k]].Field = f
	}
	cols[of[1]].Of = column.PassageOf(head)
	return cols
}
