package reading

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// groupPairs takes two columns headed as cavities, each right behind a column of devices, for the two ends, whatever the devices are
// headed: a device is written once for the rows of its cavities, or comes again in each.
//
//	Cable | Probe     | Terminal | Core  | Card | Channel
//	T1    | Oil probe | +        | brown | AI-1 | 1+
//	      |           | -        | white |      | 1-
func (l endColumns) groupPairs() {
	if l.has(l.cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldVia) {
		return
	}
	var of []int
	connectors := 0
	for i, c := range l.cols {
		if c.Field == name.FieldConnector {
			connectors++
		}
		if c.Field != name.FieldPin || l.prof[i].Filled == 0 {
			continue
		}
		if c.Given || c.Of != "" || i == 0 || len(of) > 1 || !l.namesDevices(i-1, i) {
			return
		}
		of = append(of, i-1)
	}
	if len(of) != 2 || connectors > 2 || l.texts(of[0]+1) != l.texts(of[1]+1) || !l.groupsOf(of[0]) && !l.groupsOf(of[1]) {
		return
	}
	for k, f := range [][2]name.Field{{name.FieldFrom, name.FieldFromPin}, {name.FieldTo, name.FieldToPin}} {
		l.cols[of[k]].Field, l.cols[of[k]+1].Field = f[0], f[1]
	}
}

// namesDevices reports whether a column can hold the devices of the cavities right behind it: names, the first row has one, and the
// heading is of nothing else.
func (l endColumns) namesDevices(i, pin int) bool {
	c, p := &l.cols[i], &l.prof[i]
	w := name.Words(table.Fold(c.Head))
	return !c.Given && len(w) > 0 && (c.Field == name.FieldKeep || c.Field == name.FieldConnector) && p.Filled > 0 && l.startsFilled(i) &&
		p.Filled <= l.texts(pin) && p.Numbers == 0 && p.Colours == 0 && p.Sized == 0 && 2*p.Prose <= p.Filled &&
		(c.Field == name.FieldConnector || !name.IsRemark(w) && !name.IsMeasure(w))
}

// groupsOf reports whether a device of a column has several of the cavities behind it: it is written once for them, or comes again.
func (l endColumns) groupsOf(i int) bool {
	return l.prof[i].Filled < l.texts(i+1) || l.prof[i].Distinct < l.prof[i].Filled
}

// differWithin reports whether a column stands right behind one of the devices of an end, some device has several of its cells, and
// none has one twice: they are its places.
func (l *look) differWithin(i int) bool {
	if i == 0 || l.cols[i-1].Field != name.FieldFrom && l.cols[i-1].Field != name.FieldTo {
		return false
	}
	device, n, several := "", 0, false
	seen := map[string]bool{}
	for _, r := range l.src.Rows {
		if shape.IsText(r) || !holdsText(r, i) {
			continue
		}
		if n++; holdsText(r, i-1) && table.Fold(r.Cells[i-1]) != device {
			device, n = table.Fold(r.Cells[i-1]), 1
		}
		key := device + "\x00" + r.Cells[i]
		if several = several || n > 1; seen[key] {
			return false
		}
		seen[key] = true
	}
	return several
}

// headsGroups reports whether a column is filled in just those rows that name a device, of which others go on with cavities alone.
func (l *look) headsGroups(i int) bool {
	for k, c := range l.cols {
		if c.Field != name.FieldFrom && c.Field != name.FieldTo || l.prof[k].Filled == 0 || l.prof[k].Filled >= len(l.src.Rows) {
			continue
		}
		same := true
		for _, r := range l.src.Rows {
			same = same && (shape.IsText(r) || holdsText(r, i) == holdsText(r, k))
		}
		if same {
			return true
		}
	}
	return false
}

// texts counts the rows with anything in a column: a dash below cavities is the minus pole as well.
func (l *look) texts(i int) (n int) {
	for _, r := range l.src.Rows {
		if holdsText(r, i) && !shape.IsText(r) {
			n++
		}
	}
	return n
}

// holdsText reports whether a row has anything in a column.
func holdsText(r table.Row, i int) bool {
	return i < len(r.Cells) && strings.TrimSpace(r.Cells[i]) != ""
}
