package thingpins

import (
	"strings"

	"contralay/model/wirelist/bothends"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// OwnPins takes a column and the one right behind it that is headed by the same words and one for cavities, for the parts that the wires go
// to and their cavities, where the only other cavities of the table are below the name of a plug.
//
//	Part       | Part pin | Main plug | What
//	Fan relay  | 85       | 12        | trigger
//	Alternator | B1       | 20        | charge lamp
func OwnPins(cols []shape.Column, prof []column.Profile, isPin func(word string) bool) {
	near, far := -1, -1
	for i := range cols {
		switch p := &prof[i]; {
		case cols[i].Given || cols[i].Field == name.FieldRun || cols[i].Field == name.FieldVia:
			return
		case i > 0 && isOwn(cols[i-1].Head, cols[i].Head, isPin) && p.Filled > 0 && p.All(p.Cavities) &&
			prof[i-1].Filled > 0 && !prof[i-1].Most(prof[i-1].Numbers):
			if near >= 0 {
				return
			}
			near = i
		case bothends.PlugOf(cols[i].Head) != "" && p.Filled > 0 && p.All(p.Cavities) && p.Distinct == p.Filled:
			if far >= 0 {
				return
			}
			far = i
		}
	}
	if near < 0 || far < 0 || far == near-1 {
		return
	}
	look{cols, prof, isPin}.take(near, far, bothends.PlugOf(cols[far].Head), false)
}

// isOwn reports whether a heading is that of the column before it and a word for cavities.
func isOwn(before, head string, isPin func(word string) bool) bool {
	of, ok := PinOf(head, isPin)
	return ok && of != "" && strings.EqualFold(table.Fold(of), table.Fold(strings.TrimSpace(before)))
}
