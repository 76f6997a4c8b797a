package thingpins

import (
	"contralay/model/wirelist/bothends"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// Taps takes a column headed by a word for the taps of a battery, or for its cells, for the far ends of the wires, in a table of the
// cavities of one thing that says no other end. Numbers alone count the cells. Where the cavities are a control unit's by
// their heading, a word for the things that are wired to one does as well, if nothing else names the wires.
//
//	Cell tap | BMS pin | Wire colour      Cell | Pin | Colour      Sensor | ECU pin | Colour
//	C0       | 1       | black            0    | 1   | black       MAP    | 12      | black
//	C1       | 2       | white            1    | 2   | white       Clutch | 14      | white
func Taps(cols []shape.Column, prof []column.Profile, isPin func(word string) bool) {
	b := shape.Block{Cols: cols}
	if b.Has(name.FieldFrom, name.FieldFromPin, name.FieldTo, name.FieldToPin, name.FieldRun, name.FieldVia, name.FieldDevicePin) {
		return
	}
	l, pin, plug, at := look{cols, prof, isPin}, -1, -1, -1
	for i, c := range cols {
		w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
		tap, cell := words.HeadsTap(w)
		_, ofPins := PinOf(c.Head, isPin)
		switch p := &prof[i]; {
		case p.Filled == 0 || len(w) == 0 || c.Given:
		case c.Field == name.FieldPin || c.Field == name.FieldKeep && ofPins && p.Most(p.Cavities):
			if pin >= 0 {
				return
			}
			pin = i
		case (tap || cell) && (c.Field == name.FieldKeep || c.Field == name.FieldSignal || c.Field == name.FieldConnector):
			if at >= 0 || p.Filled < 2 || p.Distinct < p.Filled {
				return
			}
			at = i
		case c.Field == name.FieldConnector || bothends.PlugOf(c.Head) != "":
			if plug >= 0 {
				return
			}
			plug = i
		}
	}
	if pin < 0 || plug >= 0 && plug != pin-1 || at < 0 && !l.thingsAlone(pin, plug, &at) {
		return
	}
	cells := &prof[at]
	_, cell := words.HeadsTap(name.Words(table.Fold(cols[at].Head)))
	switch {
	case cells.Numbers == 0:
		cols[at].Field = name.FieldTo
	case !cell || cells.Long > 0: // numbers, and the pole below the first
		return
	default:
		cols[at].Field, cols[at].Of, cols[at].Headed = name.FieldToPin, cols[at].Head, true
	}
	cols[at].Know()
	if unit, _ := PinOf(cols[pin].Head, isPin); plug >= 0 {
		cols[plug].Field, cols[pin].Field, cols[pin].Of = name.FieldFrom, name.FieldFromPin, ""
		cols[plug].Know()
	} else if unit != "" {
		cols[pin].Field, cols[pin].Of = name.FieldFromPin, unit
	}
	cols[pin].Know()
}

// thingsAlone finds the one column headed by a word for things beside the cavities of a control unit, where nothing names the wires.
func (l look) thingsAlone(pin, plug int, at *int) bool {
	unit, _ := PinOf(l.cols[pin].Head, l.isPin)
	if unit == "" || !words.HeadsUnit(name.Words(table.Fold(unit))) {
		return false
	}
	for i, c := range l.cols {
		p := &l.prof[i]
		switch {
		case p.Filled == 0 || i == pin || i == plug:
		case c.Field == name.FieldSignal:
			return false
		case (c.Field == name.FieldKeep || c.Field == name.FieldConnector) && !c.Given && l.headsThings(i):
			if *at >= 0 || p.Numbers > 0 || p.Distinct < 2 {
				return false
			}
			*at = i
		}
	}
	return *at >= 0
}
