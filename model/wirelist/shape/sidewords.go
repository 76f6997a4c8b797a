package shape

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/table"
)

// sidesByWord takes the only two headings that are a word and the same word for a side behind it for the from and the to, and the
// one column of cavities between them for the cavities that the wires go through.
//
//	Dry side | Pin | Wet side
func (h Headings) sidesByWord(cols []Column) {
	var of, pins []int
	word := ""
	for i, c := range cols {
		if c.Field == name.FieldFrom || c.Field == name.FieldTo || c.Field == name.FieldFromPin || c.Field == name.FieldToPin ||
			c.Field == name.FieldRun {
			return
		}
		w := name.Words(table.Fold(c.Head))
		if !c.Given && len(w) > 0 && (c.Field == name.FieldPin || c.Field == name.FieldKeep) &&
			h.Words[w[len(w)-1]].Field == name.FieldPin {
			pins = append(pins, i)
		}
		if c.Field != name.FieldKeep || c.Given || len(w) != 2 || !sidehead.IsEndWord(w[1]) {
			continue
		}
		if word != "" && w[1] != word {
			return
		}
		of, word = append(of, i), w[1]
	}
	if len(of) == 2 && len(pins) < 2 {
		for _, i := range pins {
			if i < of[0] || i > of[1] {
				return
			}
			if w := strings.Fields(cols[i].Head); len(w) > 1 && name.IsDesignator(w[0]) {
				cols[i].Of = w[0]
			}
			cols[i].Field = name.FieldVia
		}
		cols[of[0]].Field, cols[of[1]].Field = name.FieldFrom, name.FieldTo
		cols[of[0]].known, cols[of[1]].known = true, true
	}
}
