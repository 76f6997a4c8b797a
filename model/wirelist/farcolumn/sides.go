package farcolumn

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
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
	w := headWords(head)
	last := w[len(w)-1]
	_, joined := words.BeforeSide(last)
	if !joined && (len(w) < 2 || !sidehead.IsEndWord(last) && !sidehead.IsEndWord(w[0])) {
		return false
	}
	return 2*p.Distinct > p.Filled && p.Long == p.Filled && 3*p.Prose <= p.Filled &&
		p.Colours+p.Sized+p.Lengths+p.Currents+p.Numbers == 0 &&
		cells(rows, i, func(cell string) bool { return !sidehead.IsFitting(table.Fold(cell)) && !isOnEnd(cell) })
}
