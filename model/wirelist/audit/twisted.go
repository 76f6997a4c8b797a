package audit

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// twisted names the rows of a table of which no wire is made up with another, although a text above it speaks of twisted or
// shielded wires.
//
//	H and L of each line are one twisted pair.
//	Pin  | Signal  | To
//	J3-1 | Bus 1 H | B1-3
func (a *auditor) twisted(t *Table) {
	says := ""
	for _, r := range t.Above {
		if _, text := r.Filled(); shape.IsText(r) && len(strings.Fields(text)) > 3 && name.CableWords(text).Twisted {
			says = text
		}
	}
	if says == "" {
		return
	}
	var rows []table.Row
	for _, r := range t.Rows {
		wires := a.row(t, r).wires
		for _, w := range wires {
			if _, ok := a.units[a.im.H.Wires[w].ID]; ok {
				return
			}
		}
		if wires != nil {
			rows = append(rows, r)
		}
	}
	a.doubt("a text speaks of twisted wires", t.At, table.Short(says), "no unit made by it; make the units that it means", rows)
}
