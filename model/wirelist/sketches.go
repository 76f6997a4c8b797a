package wirelist

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/strokes"
	"contralay/model/wirelist/table"
)

// saySketches says which lines between others that join pins by strokes draw something and tell no wire, and which ends are called
// after the side they stand on.
//
//	LAMP  3 ----------- 1  DIMMER
//	LAMP  4 --+
func saySketches(im *draft.Importer, t *table.Table) {
	var drawn, sides []table.Row
	for _, r := range t.Rows {
		switch {
		case r.Sketch:
			drawn = append(drawn, r)
		case len(sides) > 0 && sides[len(sides)-1].Line == r.Line:
		case len(r.Cells) > 2 && (strings.HasPrefix(r.Cells[0], strokes.LeftEnd) || strings.HasPrefix(r.Cells[2], strokes.RightEnd)):
			sides = append(sides, r)
		}
	}
	say := func(rule, did string, rows []table.Row) {
		if len(rows) > 0 {
			im.Doubt(rule, table.Place{File: t.File, Sheet: t.Sheet, Row: rows[0].Line}, shape.RowText(rows[0].Cells), did, rows)
		}
	}
	say("a drawing between wires", "no wire is read of it; say what it joins in a row of its own", drawn)
	say("parts that nothing names", "called after the side that they stand on; say what they are called", sides)
}
