package column

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// Walls are the columns of a list in which one names the bulkhead, the next its cavities, and two more hold an end each, whatever those are
// called: the wires run from the one through the bulkhead to the other. nil where the columns are anything else.
//
//	Bulkhead | Pos | Engine side | Cabin side | Signal
//	FW1      | 1   | J4-1        | P2-11      | Starter
func Walls(cols []shape.Column, prof []Profile, rows []table.Row) []shape.Column {
	wall := slices.IndexFunc(cols, func(c shape.Column) bool {
		return !c.Given && (c.Field == name.FieldKeep || c.Field == name.FieldConnector) &&
			slices.ContainsFunc(name.Words(table.Fold(c.Head)), words.IsPassage)
	})
	if wall < 0 || wall+1 >= len(prof) || cols[wall+1].Given || !prof[wall].All(prof[wall].Ids) && !prof[wall].Most(prof[wall].Words) ||
		!prof[wall+1].All(prof[wall+1].Cavities) || prof[wall].Numbers > 0 {
		return nil
	}
	switch cols[wall+1].Field {
	case name.FieldNumber, name.FieldPin, name.FieldWire, name.FieldVia, name.FieldIgnore:
	default:
		return nil
	}
	var ends []int
	for i := range prof {
		switch c, p := &cols[i], &prof[i]; {
		case i == wall || i == wall+1 || c.Given || p.Colours > 0 || !p.Most(CavitiesIn(rows, i)) && !isSide(c.Head):
		case c.Field == name.FieldKeep, c.Field == name.FieldFrom, c.Field == name.FieldTo, c.Field == name.FieldSignal && !c.Known():
			ends = append(ends, i)
		}
	}
	if len(ends) != 2 || !slices.ContainsFunc(ends, func(i int) bool { return !cols[i].Known() || isSide(cols[i].Head) }) {
		return nil // "From" and "To" say enough by themselves
	}
	cols = slices.Clone(cols)
	cols[wall].Field, cols[wall+1].Field, cols[wall+1].Of, cols[wall+1].Running = name.FieldConnector, name.FieldVia, "", false
	cols[ends[0]].Field, cols[ends[1]].Field = name.FieldFrom, name.FieldTo
	return cols
}

// isSide reports whether a heading is of a side of a wall.
func isSide(head string) bool {
	w := name.Words(table.Fold(head))
	return len(w) > 0 && sidehead.IsEndWord(w[len(w)-1]) || words.SideOfWall(head) >= 0
}
