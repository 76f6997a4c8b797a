package runon

import (
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// GroupAbove fills in the group that a table writes in its first row alone, the channel over its legs: each leg is one of it.
//
//	Pin | Ch | Leg
//	8   | 1  | plus
//	15  |    | return
func GroupAbove(im *draft.Importer, b *shape.Block, cells []string, last map[int]string, at table.Place) []string {
	for i, c := range b.Cols {
		if !c.Carried || i >= len(cells) {
			continue
		}
		n := len(slices.DeleteFunc(slices.Clone(cells), func(s string) bool { return s == "" }))
		switch {
		case cells[i] != "":
			last[i] = cells[i]
		case n < 3: // a row of something else: the group is over
			last[i] = ""
		case last[i] != "":
			cells = slices.Clone(cells)
			cells[i] = last[i]
			im.Say(report.Note, "group not repeated", at, c.Head+" "+cells[i], "taken from the row above")
		}
	}
	return cells
}
