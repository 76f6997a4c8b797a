package shape

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// misspelt gives the columns of a row of headings that nobody knows the meaning of the known word that they are one slip of the
// hand away from: a letter too many, too few, wrong, or two in each other's place. What several meanings are near to stays
// unknown, and so does a word that is one of its own.
//
//	From | To | Guage | Coler
func (h Headings) misspelt(cols []Column) {
	const least = 5 // letters: of shorter words too many are near each other
	for i := range cols {
		c := &cols[i]
		f := table.Fold(c.Head)
		if c.known || c.Given || c.Field != name.FieldKeep || len(f) < least || strings.ContainsAny(f, " 0123456789()/-.:") ||
			name.IsOtherHead(c.Head) || name.IsDeviceWord(f) || name.IsRemark([]string{f}) || name.IsMeasure([]string{f}) {
			continue
		}
		var found name.Field
		several := false
		for word, m := range h.Words {
			if len(word) < least || strings.Contains(word, " ") || !words.IsOneSlip(f, word) || m.Weak {
				continue
			}
			several = several || found != "" && found != m.Field
			found = m.Field
		}
		if found == "" || several || (&Block{Cols: cols}).Has(found) {
			continue
		}
		c.Field, c.Misspelt = found, true
		unitOf([]string{map[name.Field]string{name.FieldGauge: "gauge"}[found]}, c)
	}
}
