package wirelist

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/freesaid"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// takeNamedFree takes in what a sentence of some tables says is free in a connector that it names, where the list has one of that name.
//
//	nav lights - panel fuse 3 to helm box pin 1, red
//	helm box pins 8 to 12 nothing in them
func takeNamedFree(im *draft.Importer, tables []table.Table) {
	var read map[[2]string]map[int]bool // rows that are read as something else
	for _, t := range tables {
		for _, r := range t.Rows {
			if !shape.IsText(r) {
				continue
			}
			if read == nil {
				read = itemRows(im)
			}
			if read[[2]string{t.File, t.Sheet}][r.Line] {
				continue
			}
			_, text := r.Filled()
			at := table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}
			for sentence := range strings.SplitSeq(text, ". ") {
				of, all := freesaid.Named(sentence)
				term := im.ByKey[name.Key(of)]
				if len(all) == 0 || term == nil {
					continue
				}
				for _, pin := range all {
					term.Pin(pin, name.Blank, at)
				}
				im.Say(report.Note, "cavities that a text says are free", at, sentence, "taken for "+term.ID+": "+strings.Join(all, ", "))
			}
		}
	}
}
