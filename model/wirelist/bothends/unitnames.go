package bothends

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// UnitNames takes a column headed by a control unit and a word for names, "ECU function", for the names of the wires, where no other
// column has them. isName tells the words for names.
//
//	ECU pin | ECU function | Sensor | Sensor pin
//	1       | Crank +      | Crank  | 1
func UnitNames(cols []shape.Column, prof []column.Profile, isName func(word string) bool) {
	at := -1
	for i, c := range cols {
		w := name.Words(table.Fold(c.Head))
		if c.Field == name.FieldSignal {
			return
		}
		if n := len(w); c.Given || c.Field != name.FieldKeep || n < 2 || n > 3 || prof[i].Filled == 0 || !isName(w[n-1]) ||
			!words.HeadsUnit(w[:n-1]) {
			continue
		}
		if at >= 0 || prof[i].Most(prof[i].Numbers) {
			return
		}
		at = i
	}
	if at >= 0 {
		cols[at].Field = name.FieldSignal
		cols[at].Know()
	}
}

// EndLabels keeps two columns of labels, one of each end, as text: what is written at an end is no second name of the wire. They name it
// only where nothing else does and both say the same.
//
//	Description | From   | To    | Label A | Label B
//	Fan feed    | FUSE 3 | FAN:1 | F3      | FAN
func EndLabels(cols []shape.Column, prof []column.Profile) {
	first := map[string]int{}
	for i, c := range cols {
		w := name.Words(table.Fold(c.Head))
		if len(w) != 2 || c.Given || prof[i].Filled == 0 || c.Field != name.FieldSignal && c.Field != name.FieldKeep &&
			c.Field != name.FieldWire {
			continue
		}
		side, of := w[1], w[0]
		if !words.HeadsLabel(of) {
			side, of = w[0], w[1]
		}
		if !words.HeadsLabel(of) || !isSideWord(side) {
			continue
		}
		if k, ok := first[of]; ok {
			cols[k].Field, cols[i].Field = name.FieldKeep, name.FieldKeep
			cols[k].Spared, cols[i].Spared = true, true
			return
		}
		first[of] = i
	}
}

// isSideWord reports whether a folded word is for one of two ends.
func isSideWord(w string) bool {
	switch w {
	case "a", "b", "1", "2", "from", "to", "start", "end", "von", "nach", "anfang", "ende", "de", "vers", "depart", "arrivee", "desde",
		"hasta", "inicio", "fin", "da", "partenza", "arrivo", "source", "dest", "destination", "left", "right":
		return true
	}
	return false
}
