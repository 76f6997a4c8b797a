package reading

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// between reads the cavities of a feedthrough whose heading says so, between two columns of devices that nobody knows.
//
//	Inside | Feedthrough pin | Outside | Signal
//	Heater | 1               | Supply  | HEAT+
func between(l *look) []shape.Column {
	if l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldConnector) ||
		l.saysOfWires() < 1 || l.Titled() == "" {
		return nil
	}
	for i := 1; i+1 < len(l.Cols); i++ {
		p := &l.Prof[i]
		if !l.EndsInPin(l.Cols[i].Head) || !p.All(p.Cavities) || !p.Unique() || l.Cols[i].Given {
			continue
		}
		if !l.holdsDevices(i-1) || !l.holdsDevices(i+1) {
			return nil
		}
		cols := slices.Clone(l.Cols)
		cols[i-1].Field, cols[i].Field, cols[i+1].Field = name.FieldFrom, name.FieldVia, name.FieldTo
		cols[i].Of = ""
		return cols
	}
	return nil
}

// holdsDevices reports whether a column that nobody knows holds names of devices: words, most of them more than once or long,
// as many as there are rows.
func (l *look) holdsDevices(i int) bool {
	c, p := &l.Cols[i], &l.Prof[i]
	return c.Field == name.FieldKeep && !c.Given && c.Head != "" && p.Most(p.Long) && 4*p.Prose <= p.Filled && p.Colours == 0 &&
		p.States == 0 && !name.IsOtherHead(c.Head) && !l.EndsInPin(c.Head)
}
