package thingpins

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// Settle takes a column headed by a word for things, the cavities right behind it, and the only other cavities of the table, those of a
// control unit, for the two ends of each wire. isPin tells the words for cavities.
//
//	Sensore  | Pin sensore | Funzione | Pin centralina
//	Farfalla | 1           | massa    | A5
//	         | 2           | segnale  | A12
func Settle(cols []shape.Column, prof []column.Profile, isPin func(word string) bool) {
	var pins []int
	for i, c := range cols {
		switch c.Field {
		case name.FieldFrom, name.FieldTo, name.FieldRun, name.FieldVia:
			return
		}
		if _, ok := pinOf(c.Head, isPin); ok && prof[i].Filled > 0 {
			pins = append(pins, i)
		}
	}
	if len(pins) != 2 || pins[0] == 0 {
		return
	}
	thing, near, far := pins[0]-1, pins[0], pins[1]
	for _, i := range []int{thing, near, far} {
		if cols[i].Given {
			return
		}
	}
	of, _ := pinOf(cols[near].Head, isPin)
	unit, _ := pinOf(cols[far].Head, isPin)
	head := name.Words(name.WithoutBrackets(table.Fold(cols[thing].Head)))
	if p := &prof[far]; unit == "" || !words.HeadsThings(head) || of != "" && !words.SameNoun(of, head) || words.SameNoun(unit, head) ||
		!words.HeadsUnit(name.Words(table.Fold(unit))) || !p.Most(p.Cavities) || prof[thing].Filled == 0 ||
		prof[thing].Most(prof[thing].Numbers) {
		return
	}
	cols[thing].Field, cols[near].Field, cols[far].Field = name.FieldFrom, name.FieldFromPin, name.FieldToPin
	cols[near].Of, cols[far].Of = "", unit
	for _, i := range []int{thing, near, far} {
		cols[i].Know()
	}
}

// pinOf parts a heading of cavities in the word for them and what they are of, as it is written; of is "" where it names nothing.
//
//	Pin centralina   ECU pin   Broche du calculateur   Pin
func pinOf(head string, isPin func(word string) bool) (of string, ok bool) {
	const most = 5 // words of such a heading (no source)
	all := strings.Fields(name.WithoutBrackets(head))
	if len(all) == 0 || len(all) > most {
		return "", false
	}
	is := func(i int) bool { w := table.Fold(all[i]); return isPin(w) || name.IsPinWord(w) }
	switch last := len(all) - 1; {
	case is(0):
		all = all[1:]
		for len(all) > 1 && words.JoinsNouns(table.Fold(all[0])) {
			all = all[1:]
		}
	case is(last):
		all = all[:last]
	default:
		return "", false
	}
	return strings.Join(all, " "), true
}
