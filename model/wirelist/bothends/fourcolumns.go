package bothends

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
)

// FourColumns takes two columns of names, each right before the cavities there, for the two ends of each wire, where the headings belong
// together: those of each end have a word in common, or the two of a kind are one word with two sides. What the headings alone say of a
// device counts less than the column that names it.
//
//	Module | Module pin | Sensor | Sensor pin      ECU plug | ECU pin | Sensor | Sensor pin
//	PDM    | 1          | Fan    | A               J1       | 14      | CLT    | 1
func FourColumns(cols []shape.Column, prof []column.Profile, rows []table.Row, isPin func(word string) bool) {
	l := look{cols, prof, rows}
	var pins []int
	for i := range cols {
		if cols[i].Given || cols[i].Field == name.FieldRun || cols[i].Field == name.FieldVia {
			return
		}
		if prof[i].Filled > 0 && withPinWord(cols[i].Head, isPin) && cols[i].Field != name.FieldContact {
			pins = append(pins, i)
		}
	}
	if len(pins) != 2 || pins[0] < 1 || pins[1] < pins[0]+2 {
		return
	}
	a, b := pins[0], pins[1]
	if !l.holdCavities(a) || !l.holdCavities(b) || !l.areNames(a-1, isPin) || !l.areNames(b-1, isPin) || !belong(cols, a, b, isPin) {
		return
	}
	for i, c := range cols { // what says a third place is not for these four
		another := c.Field == name.FieldFrom || c.Field == name.FieldTo || c.Field == name.FieldConnector
		if prof[i].Filled > 0 && i != a-1 && i != b-1 && (another || saysThrough(c.Head)) {
			return
		}
	}
	if cols[a-1].Field == name.FieldTo || cols[a].Field == name.FieldToPin {
		return // their headings say that the far end stands first
	}
	for k, i := range pins {
		of := [][2]name.Field{{name.FieldFrom, name.FieldFromPin}, {name.FieldTo, name.FieldToPin}}[k]
		cols[i-1].Field, cols[i].Field = of[0], of[1]
		cols[i-1].Of, cols[i].Of, cols[i].Running = "", "", false
		cols[i-1].Know()
		cols[i].Know()
	}
}

// holdCavities reports whether most cells of a column are names of cavities.
func (l look) holdCavities(i int) bool {
	p := &l.prof[i]
	return p.Most(max(p.Cavities, column.ShortNames(l.rows, i)))
}

// withPinWord reports whether a heading has a word for cavities among some others.
func withPinWord(head string, isPin func(word string) bool) bool {
	w := name.Words(name.WithoutBrackets(table.Fold(head)))
	return len(w) > 1 && len(w) < 5 && slices.ContainsFunc(w, func(w string) bool { return isPin(w) && !plugword.Is(w) })
}

// areNames reports whether a column holds names of devices or connectors, by its cells and by a heading that is known for nothing else.
func (l look) areNames(i int, isPin func(word string) bool) bool {
	c, p := l.cols[i], &l.prof[i]
	switch c.Field {
	case name.FieldKeep, name.FieldConnector, name.FieldFrom, name.FieldTo, name.FieldSignal, name.FieldNumber:
	default:
		return false
	}
	w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
	return len(w) > 0 && (c.Field != name.FieldSignal || !c.Known()) && p.Filled > 1 && 4*p.Prose <= p.Filled &&
		p.Colours+p.Sized+p.Lengths+p.Currents+p.Numbers == 0 && !name.IsMeasure(w) && !name.IsRemark(w) && !sidehead.IsFitting(c.Head) &&
		!slices.ContainsFunc(w, isPin)
}

// belong reports whether the headings of two columns of cavities, and of the columns before them, are those of the two ends.
func belong(cols []shape.Column, a, b int, isPin func(word string) bool) bool {
	_, pins := withoutSides(cols[a].Head, cols[b].Head)
	_, devices := withoutSides(cols[a-1].Head, cols[b-1].Head)
	if pins && devices {
		return true
	}
	return shares(cols[a-1].Head, cols[a].Head, isPin) && shares(cols[b-1].Head, cols[b].Head, isPin) &&
		!strings.EqualFold(cols[a-1].Head, cols[b-1].Head)
}

// shares reports whether the headings of a device and of its cavities begin with one word.
func shares(device, pins string, isPin func(word string) bool) bool {
	d, p := name.Words(name.WithoutBrackets(table.Fold(device))), name.Words(name.WithoutBrackets(table.Fold(pins)))
	return len(d) > 0 && len(p) > 1 && d[0] == p[0] && !isPin(d[0])
}
