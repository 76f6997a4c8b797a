package bothends

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/words"
)

// loneCables takes the ids of cables for those of the wires, where each wire of a list of both ends has one of its own and no other id.
//
//	Cable | From        | To       | Size | Colour
//	E01   | Main switch | Bus      | 16   | red
//	E02   | Neg bar     | Bus      | 16   | black
func loneCables(cols []shape.Column, prof []column.Profile) {
	at, from, to, values := -1, 0, 0, false
	for i := range min(len(cols), len(prof)) {
		c, p := &cols[i], &prof[i]
		switch {
		case p.Filled == 0:
		case c.Field == name.FieldWire || c.Field == name.FieldNumber || c.Field == name.FieldRun:
			return
		case c.Field == name.FieldCable:
			if at >= 0 || c.Given || p.Filled < 3 || !p.Unique() || !p.Most(p.Ids) {
				return
			}
			at = i
		case c.Field == name.FieldFrom:
			from = p.Filled
		case c.Field == name.FieldTo:
			to = p.Filled
		case c.Field == name.FieldColour && p.Most(p.Colours):
			values = true
		}
	}
	if at >= 0 && values && prof[at].Filled >= max(from, to) && min(from, to) > 0 {
		cols[at].Field = name.FieldWire
	}
}

// MarkedNames takes for the names what is written on the wires, where a list of both ends has ids and no names, and most of the markings
// are words without digits.
//
//	Wire | End A  | End B | Marking
//	501  | J21-1  | F3-A  | HORN FEED
func MarkedNames(cols []shape.Column, prof []column.Profile) {
	loneCables(cols, prof)
	at, ids, ends := -1, false, 0
	for i := range min(len(cols), len(prof)) {
		c, p := &cols[i], &prof[i]
		switch {
		case p.Filled == 0:
		case c.Field == name.FieldSignal:
			return
		case c.Field == name.FieldWire:
			ids = true
		case c.Field == name.FieldFrom || c.Field == name.FieldTo:
			ends++
		case c.Field == name.FieldKeep && !c.Given && words.HeadsLabel(c.Head):
			if at >= 0 {
				return
			}
			at = i
		}
	}
	if at < 0 || !ids || ends != 2 {
		return
	}
	p := &prof[at]
	worded := 4*p.Words >= 3*p.Filled && 2*p.Long > p.Filled
	if worded && 4*(p.States+p.Changes) <= p.Filled && 4*p.Prose <= p.Filled && p.Colours+p.Lengths+p.Ends == 0 && 2*p.Distinct > p.Filled {
		cols[at].Field = name.FieldSignal
	}
}
