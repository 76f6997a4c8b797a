package wirelist

import (
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
)

// sayTakenOut says of each row below a heading that takes wires out of the loom that it is left out, and of the heading.
func sayTakenOut(im *draft.Importer, t *table.Table) {
	for _, s := range signoff.TakenOut(t.Rows) {
		for _, r := range slices.Concat(s.Head, s.Rows) {
			im.Say(report.Warn, "below a heading that takes wires out", table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line},
				shape.RowText(r.Cells), "left out")
		}
	}
}
