package bothends

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// LetteredPins calls the ends of a table by the letters in the headings of their cavities, where nothing names a connector.
//
//	Signal | Pin A | Pin B | Colour
//	CAN H  | 1     | 7     | yellow
func LetteredPins(cols []shape.Column, prof []column.Profile, titled bool) {
	if titled {
		return
	}
	var at [2]int
	n := 0
	for i, c := range cols {
		if isEndField(c.Field) || c.Field == name.FieldPin || c.Given && (c.Field == name.FieldFromPin || c.Field == name.FieldToPin) {
			return
		}
		if c.Field != name.FieldFromPin && c.Field != name.FieldToPin || prof[i].Filled == 0 {
			continue
		}
		if n == len(at) || c.Of != "" || !prof[i].All(prof[i].Cavities) {
			return
		}
		at[n] = i
		n++
	}
	if n != len(at) {
		return
	}
	letters := [2]string{}
	for k, i := range at {
		w := name.Words(table.Fold(cols[i].Head))
		switch {
		case len(w) == 2 && len(w[1]) == 1 && (w[1] == "a" || w[1] == "b"):
			letters[k] = w[1]
		case len(w) == 2 && (w[0] == "a" || w[0] == "b"):
			letters[k] = w[0]
		default:
			return
		}
	}
	if letters[0] == letters[1] {
		return
	}
	for k, i := range at {
		cols[i].Of, cols[i].Vague = map[string]string{"a": "A", "b": "B"}[letters[k]], true
	}
}
