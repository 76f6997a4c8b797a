package settle

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// groupPairs takes two columns headed as cavities, each right behind a column of devices, for the two ends, whatever the devices are
// headed: a device is written once for the rows of its cavities, or comes again in each.
//
//	Cable | Probe     | Terminal | Core  | Card | Channel
//	T1    | Oil probe | +        | brown | AI-1 | 1+
//	      |           | -        | white |      | 1-
func (l endColumns) groupPairs() {
	if l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldVia) {
		return
	}
	var of []int
	connectors := 0
	for i, c := range l.Cols {
		if c.Field == name.FieldConnector {
			connectors++
		}
		if c.Field != name.FieldPin || l.Prof[i].Filled == 0 {
			continue
		}
		if c.Given || c.Of != "" || i == 0 || len(of) > 1 || !l.namesDevices(i-1, i) {
			return
		}
		of = append(of, i-1)
	}
	if len(of) != 2 || connectors > 2 || column.Texts(l.Src.Rows, of[0]+1) != column.Texts(l.Src.Rows, of[1]+1) ||
		!l.groupsOf(of[0]) && !l.groupsOf(of[1]) {
		return
	}
	for k, f := range [][2]name.Field{{name.FieldFrom, name.FieldFromPin}, {name.FieldTo, name.FieldToPin}} {
		l.Cols[of[k]].Field, l.Cols[of[k]+1].Field = f[0], f[1]
	}
}

// namesDevices reports whether a column can hold the devices of the cavities right behind it: names, the first row has one, and the
// heading is of nothing else.
func (l endColumns) namesDevices(i, pin int) bool {
	c, p := &l.Cols[i], &l.Prof[i]
	w := name.Words(table.Fold(c.Head))
	return !c.Given && len(w) > 0 && (c.Field == name.FieldKeep || c.Field == name.FieldConnector) && p.Filled > 0 &&
		column.StartsFilled(l.Src.Rows, i) &&
		p.Filled <= column.Texts(l.Src.Rows, pin) && p.Numbers == 0 && p.Colours == 0 && p.Sized == 0 && 2*p.Prose <= p.Filled &&
		(c.Field == name.FieldConnector || !name.IsRemark(w) && !name.IsMeasure(w))
}

// groupsOf reports whether a device of a column has several of the cavities behind it: it is written once for them, or comes again.
func (l endColumns) groupsOf(i int) bool {
	return l.Prof[i].Filled < column.Texts(l.Src.Rows, i+1) || l.Prof[i].Distinct < l.Prof[i].Filled
}

// placesWithin reports whether a column stands right behind one of the devices of an end, some device has several of its cells, and
// none has one twice: they are its places.
func (l *Look) placesWithin(i int) bool {
	f := l.Cols[max(i-1, 0)].Field
	return i > 0 && (f == name.FieldFrom || f == name.FieldTo) && column.PlacesWithin(l.Src.Rows, i-1, i)
}

// headsGroups reports whether a column is filled in just those rows that name a device, of which others go on with cavities alone.
func (l *Look) headsGroups(i int) bool {
	for k, c := range l.Cols {
		if (c.Field == name.FieldFrom || c.Field == name.FieldTo) && l.Prof[k].Filled > 0 && l.Prof[k].Filled < len(l.Src.Rows) &&
			column.FilledAlike(l.Src.Rows, i, k) {
			return true
		}
	}
	return false
}
