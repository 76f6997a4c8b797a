package farcolumn

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// ofSide reports whether a heading is a thing and a word for its side, in one word or two, and the cells below it are names: what the wires
// of a plug go to there.
//
//	Pin | Colour | Function | Bike side
//	1   | red    | feed     | fuse 4
//	3   | black  | ground   | frame bolt
//
// A side of the table itself, "Left side", holds one of a few words, and what is put on that end of the wire is no place, "Lamp end: ring".
func ofSide(head string, p *column.Profile, rows []table.Row, i int) bool {
	if !isSide(head) || isOwnSide(headWords(head)[0]) {
		return false
	}
	return 2*p.Distinct > p.Filled && p.Long == p.Filled && 3*p.Prose <= p.Filled &&
		p.Colours+p.Sized+p.Lengths+p.Currents+p.Numbers == 0 &&
		cells(rows, i, func(cell string) bool { return !sidehead.IsFitting(table.Fold(cell)) && !isOnEnd(cell) })
}

// isSide reports whether a heading has a word for a side or an end behind another or before it.
func isSide(head string) bool {
	w := headWords(head)
	if len(w) == 0 {
		return false
	}
	last := w[len(w)-1]
	_, joined := words.BeforeSide(last)
	return joined || len(w) > 1 && (sidehead.IsEndWord(last) || sidehead.IsEndWord(w[0]))
}

// isOwnSide reports whether a folded word before that for a side says which side of the plug itself it is. Common words, from memory, no
// source.
func isOwnSide(w string) bool {
	return slices.Contains([]string{"left", "right", "front", "back", "rear", "top", "bottom", "upper", "lower", "inner", "outer", "inside",
		"outside", "wire", "wiring", "cable", "mating", "contact", "pin", "component", "solder", "male", "female", "linke", "rechte",
		"innen", "aussen", "vorderseite", "ruckseite", "oberseite", "unterseite", "lotseite", "innenseite", "aussenseite",
		"kabelseite", "steckseite", "kontaktseite"}, w)
}

// saysPlaces reports whether some cell of a column has a number, as the places on devices have: "fuse 4".
func saysPlaces(rows []table.Row, i int) bool {
	return !cells(rows, i, func(cell string) bool { return !value.HasDigit(cell) })
}
