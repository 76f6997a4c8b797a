package parthead

import (
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// A table that stands in a document by its place on the page alone has no rule below its headings. Where a word for numbers heads the first
// column and the rows below rise from one, the row of words is the headings.
//
//	Num   Colour   Name
//	1     red      SUPPLY
//	2     yellow   LIMIT

// isCounted reports whether the first row of such a table is its headings.
func isCounted(h shape.Headings, t *table.Table, rows []table.Row) bool {
	r := rows[0]
	if !t.Marked || !r.First || r.Ruled || r.Cells[0] == "" || !words.IsNumberWord(strings.TrimRight(table.Fold(r.Cells[0]), ".:")) ||
		!h.KnowsOne(r) {
		return false
	}
	for k, below := range rows[1:] {
		if pin, _ := pinOf(below.Cells[0]); below.First || k == 0 && pin != "1" || !isPin(pin) {
			return false
		}
	}
	return true
}
