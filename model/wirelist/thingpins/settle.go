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
// control unit, for the two ends of each wire. isPin tells the words for cavities. The unit may have
// several plugs, in a column right before its cavities.
//
//	Sensore  | Pin sensore | Funzione | Pin centralina
//	Farfalla | 1           | massa    | A5
//	         | 2           | segnale  | A12
func Settle(cols []shape.Column, prof []column.Profile, isPin func(word string) bool) {
	l := look{cols, prof, isPin}
	var pins, plugs []int
	for i, c := range cols {
		switch c.Field {
		case name.FieldFrom, name.FieldTo, name.FieldRun, name.FieldVia:
			return
		case name.FieldConnector:
			if !l.headsThings(i) {
				plugs = append(plugs, i)
			}
		}
		if _, ok := PinOf(c.Head, isPin); ok && prof[i].Filled > 0 {
			pins = append(pins, i)
		}
	}
	if len(pins) != 2 || len(plugs) > 1 {
		return
	}
	for k, near := range pins {
		far := pins[1-k]
		if unit := l.unitOf(far, near); unit != "" && l.isPair(near) && (plugs == nil || plugs[0] == far-1 && !cols[far-1].Given) {
			l.take(near, far, unit, plugs != nil)
			return
		}
	}
}

// look is the columns of a table.
type look struct {
	cols  []shape.Column
	prof  []column.Profile
	isPin func(word string) bool
}

// headsThings reports whether a column is headed by a word for things that wires are taken to.
func (l look) headsThings(i int) bool {
	return words.HeadsThings(name.Words(name.WithoutBrackets(table.Fold(l.cols[i].Head))))
}

// isPair reports whether a column of cavities stands right behind the one of the things that they are of.
func (l look) isPair(near int) bool {
	if near == 0 || l.cols[near].Given || l.cols[near-1].Given || !l.headsThings(near-1) {
		return false
	}
	of, _ := PinOf(l.cols[near].Head, l.isPin)
	p := &l.prof[near-1]
	return (of == "" || words.SameNoun(of, name.Words(table.Fold(l.cols[near-1].Head)))) && p.Filled > 0 && !p.Most(p.Numbers)
}

// unitOf is the control unit that a column of cavities is of by its heading; "" where it is of none, or of the things of the others.
func (l look) unitOf(far, near int) string {
	unit, _ := PinOf(l.cols[far].Head, l.isPin)
	p := &l.prof[far]
	if l.cols[far].Given || unit == "" || !words.HeadsUnit(name.Words(table.Fold(unit))) || !p.Most(p.Cavities) ||
		near > 0 && words.SameNoun(unit, name.Words(table.Fold(l.cols[near-1].Head))) {
		return ""
	}
	return unit
}

// take gives the columns their meaning, the end that stands first being the near one. plugs: those of the unit stand before its
// cavities.
func (l look) take(near, far int, unit string, plugs bool) {
	ends := [2][2]name.Field{{name.FieldFrom, name.FieldFromPin}, {name.FieldTo, name.FieldToPin}}
	if far < near {
		ends[0], ends[1] = ends[1], ends[0]
	}
	l.cols[near-1].Field, l.cols[near].Field, l.cols[far].Field = ends[0][0], ends[0][1], ends[1][1]
	l.cols[near].Of, l.cols[far].Of = "", unit
	if plugs {
		l.cols[far-1].Field, l.cols[far].Of = ends[1][0], ""
		l.cols[far-1].Know()
	}
	for _, i := range []int{near - 1, near, far} {
		l.cols[i].Know()
	}
}

// PinOf parts a heading of cavities in the word for them and what they are of, as it is written; of is "" where it names nothing.
//
//	Pin centralina   ECU pin   Broche du calculateur   Pin
func PinOf(head string, isPin func(word string) bool) (of string, ok bool) {
	const most = 5 // words of such a heading (no source)
	all := strings.FieldsFunc(name.WithoutBrackets(head), func(r rune) bool { return r == ' ' || r == '-' || r == '_' })
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
