package column

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// unheadedNotes takes the last column for remarks where it has no heading, no other has remarks, and hardly a cell of it is a value of a
// wire or an end.
//
//	Signal | Hull pin | Wire | Gauge |
//	Data A | 5        | blue | 24    | twisted w/ 6
//	Data B | 6        | grey | 24    | twisted w/ 5
//	Light  | 8        | red  | 22    | to be sealed
func unheadedNotes(cols []shape.Column, prof []Profile) {
	at, heads := -1, 0
	for i := range cols {
		if cols[i].Head != "" {
			heads++
		}
		if cols[i].Field == name.FieldNote {
			return
		}
		if prof[i].Filled > 0 {
			at = i
		}
	}
	if at < 2 || heads < 2 {
		return
	}
	c, p := &cols[at], &prof[at]
	if values := p.Cavities + p.Ends + p.Colours + p.Sizes + p.Lengths + p.Currents + p.Numbers + p.Specs; c.Head == "" && !c.Given &&
		c.Field == name.FieldKeep && 2*p.Long > p.Filled && 5*values <= p.Filled {
		c.Field = name.FieldNote
	}
}
