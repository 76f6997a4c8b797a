package wirelist

import (
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
)

// sayQuoted says of each line that a letter quotes of an older one, and of those that it ends with, that it is left out.
func sayQuoted(im *draft.Importer, t *table.Table) {
	for _, r := range signoff.Quoted(t.Rows) {
		im.Say(report.Warn, "lines quoted of another letter", table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line},
			shape.RowText(r.Cells), "left out")
	}
	for _, r := range signoff.Signature(t.Rows) {
		im.Say(report.Note, "about the paper", table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}, shape.RowText(r.Cells), "left out")
	}
}
