package row

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/value"
)

// Twice says which columns are read only where the one before them is empty.
func Twice(b *shape.Block, im *draft.Importer, at value.Place) {
	for _, f := range shape.Once() {
		var heads []string
		for _, c := range b.Cols {
			if c.Field == f {
				heads = append(heads, c.Head)
			}
		}
		if len(heads) < 2 {
			continue
		}
		for _, r := range b.Rows {
			if len(b.Beside(r.Cells)) > 0 {
				at.Column = heads[0]
				im.Say(report.Note, "two columns of one kind", at, strings.Join(heads, " | "),
					"the first that is filled counts, the other is kept in the notes")
				break
			}
		}
	}
}
