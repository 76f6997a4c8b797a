// Package fuseways finds tables of fuses of which each row is the wire from a fuse to what it feeds.
package fuseways

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// look is the columns of a table that could be one of fuses.
type look struct {
	cols []shape.Column
	prof []column.Profile
}

// Settle takes the names of fuses for the cavities of their box, where another column says what they are rated and a third what they
// feed, and the rows say of wires what colour or size they have: a wire starts at each. Ids of the wires may stand beside them, behind
// the fuse; a table that begins with the wires says by which fuse each is protected.
//
//	Fuse | Rating | Wire | Load | Size | Colour
//	F1   | 10 A   | L01  | Pump | 2.5  | red
//
// The cavity of what they feed may stand behind it.
func Settle(cols []shape.Column, prof []column.Profile) {
	coloursOfBlades(cols)
	l := look{cols, prof}
	fuse, wire := l.fuses(), l.find(name.FieldWire)
	if fuse < 0 || wire >= 0 && wire < fuse || l.find(name.FieldGauge) < 0 && l.find(name.FieldColour) < 0 {
		return
	}
	for _, f := range []name.Field{name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldConnector, name.FieldVia} {
		if l.find(f) >= 0 {
			return
		}
	}
	rating, load := l.rating(fuse), l.load(fuse)
	if rating < 0 || load < 0 {
		return
	}
	pin := l.find(name.FieldPin)
	switch {
	case pin < 0:
	case pin == load+1 && !cols[pin].Given: // the cavity of what they feed
		cols[pin].Field = name.FieldToPin
		cols[pin].Know()
	default:
		return
	}
	cols[fuse].Field, cols[fuse].Of, cols[fuse].Fuses = name.FieldPin, cols[fuse].Head, true
	cols[rating].Field = name.FieldFuse
	cols[load].Field = name.FieldTo
	for _, i := range []int{fuse, rating, load} {
		cols[i].Know()
	}
}

// find is the first column of a field that holds something; −1 where there is none.
func (l look) find(f name.Field) int {
	for i, c := range l.cols {
		if c.Field == f && l.prof[i].Filled > 0 {
			return i
		}
	}
	return -1
}

// fuses is the column that has a name for each fuse and no rating: it is headed as fuses or as their box, "Fuse box"; −1 where there is
// none. A fuse may feed several wires, a row each, in a table that begins with the fuses.
func (l look) fuses() int {
	for i, c := range l.cols {
		p := &l.prof[i]
		if c.Given || c.Field != name.FieldFuse && (c.Field != name.FieldKeep || !words.HoldsFuses(c.Head)) ||
			p.Filled < 2 || !p.All(p.Cavities) || p.Currents > 0 {
			continue
		}
		if p.Unique() || i == 0 && 2*p.Distinct >= p.Filled && p.All(p.Ids) {
			return i
		}
	}
	return -1
}

// rating is the column of what the fuses are rated, −1 where there is none.
func (l look) rating(fuse int) int {
	for i, c := range l.cols {
		p := &l.prof[i]
		if i == fuse || c.Given || p.Filled == 0 ||
			c.Field != name.FieldCurrent && c.Field != name.FieldKeep && c.Field != name.FieldFuse {
			continue
		}
		if p.All(p.Currents) || table.Fold(c.Head) == "a" && p.All(p.Numbers) ||
			c.Field == name.FieldCurrent && p.All(p.Numbers+p.Currents) {
			return i
		}
	}
	return -1
}

// load is the column of what the fuses feed, −1 where there is none: headed as a load, or as where the wires go.
func (l look) load(fuse int) int {
	if to := l.find(name.FieldTo); to >= 0 {
		return to
	}
	for i, c := range l.cols {
		p := &l.prof[i]
		w := name.Words(table.Fold(c.Head))
		if i == fuse || c.Given || len(w) == 0 || c.Field != name.FieldKeep && c.Field != name.FieldCurrent ||
			p.Currents+p.Numbers+p.Colours > 0 || !p.Most(p.Long) {
			continue
		}
		if name.IsDeviceWord(w[0]) || name.IsDeviceWord(w[len(w)-1]) {
			return i
		}
	}
	return -1
}
