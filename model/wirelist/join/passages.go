package join

import (
	"fmt"
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// passage is a cavity in which a circuit comes from the table of one plug and goes on in that of another: one wire on either side.
//
//	## BH2 bulkhead                     ## P5 dash
//	Pin | Circuit | Goes to             Pin | Circuit | Goes to
//	3   | Oil     | Oil sender          6   | Oil     | BH2 pin 3
type passage struct {
	at         draft.End
	first, too *draft.Item
}

// sayPassages names both rows of each passage. A bulkhead is made for it; in any other plug a person should look.
func sayPassages(im *draft.Importer, all []passage) {
	for _, p := range all {
		level := report.Warn
		if slices.ContainsFunc(name.Words(table.Fold(calledAs(p.at.Term))), words.IsPassage) {
			level = report.Note
		}
		im.Say(level, "two wires in one cavity", p.too.Place, fmt.Sprintf("%s, %q of this row and of %s", p.at, p.too.Signal,
			rowOf(p.first.Place, p.too.Place)), "both kept: the circuit goes on through the plug")
		if p.first.Place.File == p.too.Place.File && p.first.Place.Sheet == p.too.Place.Sheet {
			last := &im.Rep.Findings[len(im.Rep.Findings)-1]
			last.Rows = []int{p.first.Place.Row, p.too.Place.Row}
		}
	}
}
