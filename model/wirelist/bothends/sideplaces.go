package bothends

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
)

// SidePlaces takes two columns whose headings are one word for a place, of the one end and of the other, for the cavities of the devices
// in the from and the to, wherever they stand; and so two such headings without a side, each right behind its device.
//
//	Wire | Side A | Position A | Side B | Position B      Connector | Pos | Connector | Pos
//	W1   | Box    | 3          | Winch  | A1              Box       | 3   | Winch     | A1
func SidePlaces(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	a, b, from, to := -1, -1, -1, -1
	for i := range cols {
		for k := range cols {
			sided := i != k && headsOfSides(cols[i].Head, cols[k].Head)
			again := !sided && i < k && isPlace(cols[i].Head) && table.Fold(cols[i].Head) == table.Fold(cols[k].Head)
			if !sided && !again {
				continue
			}
			near, far := ofSides(cols, i, k)
			if again && (i != near+1 || k != far+1) {
				continue
			}
			if near < 0 || a >= 0 || !couldBePlaces(cols, prof, rows, i, sided) || !couldBePlaces(cols, prof, rows, k, sided) {
				return
			}
			a, b, from, to = i, k, near, far
		}
	}
	if a < 0 {
		return
	}
	for i := range cols {
		if f := cols[i].Field; i != a && i != b && (f == name.FieldFromPin || f == name.FieldToPin || f == name.FieldPin) {
			return
		}
	}
	cols[from].Field, cols[to].Field, cols[a].Field, cols[b].Field = name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin
	for _, i := range []int{a, b} {
		cols[i].Of, cols[i].Running = "", false
		cols[i].Know()
	}
}

// ofSides are the only columns of the devices of the two sides, the from and the to or two of connectors with one heading, but for two
// columns of places; −1 where there are none, or more.
func ofSides(cols []shape.Column, a, b int) (from, to int) {
	of := map[name.Field][]int{}
	for i, c := range cols {
		if i != a && i != b {
			of[c.Field] = append(of[c.Field], i)
		}
	}
	sides := append(of[name.FieldFrom], of[name.FieldTo]...)
	if plugs := of[name.FieldConnector]; len(sides) == 0 && len(plugs) == 2 && !cols[plugs[0]].Given && !cols[plugs[1]].Given &&
		table.Fold(cols[plugs[0]].Head) == table.Fold(cols[plugs[1]].Head) {
		sides = plugs
	} else if len(of[name.FieldFrom]) != 1 || len(of[name.FieldTo]) != 1 {
		return -1, -1
	}
	return sides[0], sides[1]
}

// couldBePlaces reports whether a column that nobody spoke of holds cavities, by its cells: short words. One whose heading has a side and
// a word for a place may be taken for the side alone, as "To #" is.
func couldBePlaces(cols []shape.Column, prof []column.Profile, rows []table.Row, i int, sided bool) bool {
	c := &cols[i]
	if sided && (c.Field == name.FieldFrom || c.Field == name.FieldTo) {
		return !c.Given && prof[i].Filled > 0 && prof[i].Most(prof[i].Cavities)
	}
	switch c.Field {
	case name.FieldKeep, name.FieldNumber, name.FieldIgnore, name.FieldWire, name.FieldPin, name.FieldFromPin, name.FieldToPin:
		p := &prof[i]
		return !c.Given && p.Filled > 0 && p.Most(max(p.Cavities, column.ShortNames(rows, i)))
	}
	return false
}

// headsOfSides reports whether two headings are one word for a place, the first with that of the one side, and the second with that of the
// other: "Pos A" and "Pos B", "From position" and "To position".
func headsOfSides(a, b string) bool {
	rest, ok := withoutSides(a, b)
	return ok && arePlace(rest)
}

// withoutSides is what two headings have in common that are alike but for the words of the two sides.
func withoutSides(a, b string) (rest []string, ok bool) {
	one, other := wordsOf(a), wordsOf(b)
	if len(one) < 2 || len(one) != len(other) {
		return nil, false
	}
	apart := -1
	for i := range one {
		if one[i] != other[i] {
			if apart >= 0 {
				return nil, false
			}
			apart = i
		}
	}
	if apart < 0 || !slices.Contains(sides, [2]string{one[apart], other[apart]}) {
		return nil, false
	}
	return slices.Delete(one, apart, apart+1), true
}

// isPlace reports whether a heading is a word for a place alone.
func isPlace(head string) bool { return arePlace(wordsOf(head)) }

// wordsOf are the words of a heading, of which the sign for a number is one.
func wordsOf(head string) []string {
	return name.Words(strings.ReplaceAll(table.Fold(head), "#", " no "))
}

// arePlace reports whether words are one for a place, and such as are for an end.
func arePlace(w []string) bool {
	w = slices.DeleteFunc(w, sidehead.IsEndWord)
	return len(w) == 1 && slices.Contains(places, w[0])
}

// sides are the words for the two sides of a wire. Common words, from memory, no source.
var sides = [][2]string{{"a", "b"}, {"1", "2"}, {"i", "ii"}, {"from", "to"}, {"source", "destination"}, {"source", "dest"},
	{"origin", "destination"}, {"origin", "dest"},
	{"orig", "dest"}, {"src", "dst"}, {"src", "dest"}, {"source", "target"},
	{"source", "sink"}, {"master", "slave"}, {"1st", "2nd"}, {"left", "right"}, {"start", "end"}, {"start", "finish"}, {"near", "far"},
	{"von", "nach"},
	{"start", "ziel"}, {"quelle", "ziel"}, {"anfang", "ende"}, {"de", "vers"}, {"de", "a"}, {"depart", "arrivee"}, {"depuis", "vers"},
	{"desde", "hasta"}, {"origen", "destino"}, {"da", "a"}, {"partenza", "arrivo"}, {"van", "naar"}, {"od", "do"}, {"z", "do"},
	{"fran", "till"}, {"fra", "til"}, {"mista", "minne"}}

// places are words for a place on a device that alone would be numbers of rows, or nothing that is known. Common words, from memory, no
// source.
var places = []string{"pos", "position", "no", "nr", "number", "num", "idx", "index", "slot", "hole", "platz", "stelle",
	"nummer", "loch", "emplacement", "repere", "trou", "numero", "posicion", "hueco", "posizione", "foro", "posicao",
	"positie", "gat", "hal", "pozycja", "gniazdo", "pozice"}
