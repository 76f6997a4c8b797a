package runon

import (
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Ditto fills in marks that say "as above".
func Ditto(im *draft.Importer, r table.Row, above []string, place table.Place) []string {
	cells := r.Cells
	for i, c := range cells {
		if value.IsDitto(c) {
			if i < len(above) {
				if &cells[0] == &r.Cells[0] {
					cells = slices.Clone(cells)
				}
				cells[i] = above[i]
				im.Say(report.Note, "as above", place, c, "taken from the row above")
			}
		}
	}
	return cells
}
