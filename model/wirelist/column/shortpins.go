package column

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Narrow columns are headed by two letters, and "Pn" or "P/N" is the number of a part in most lists.
//
//	Cn  | Pn | Sig   | Wire | to
//	CN1 | 1  | Valve | red  | SSR 1
//	CN1 | 2  | Fan   | blue | Fan
//	CN2 | 1  | Drum  | red  | Drum +

// shortPins takes a column headed "Pn" for the cavities of the connectors before it, where its cells are cavities that begin again with
// each connector: numbers of parts do not, and no other column has cavities.
func shortPins(cols []shape.Column, prof []Profile, rows []table.Row) {
	at := slices.IndexFunc(cols, func(c shape.Column) bool {
		w := name.Words(table.Fold(c.Head))
		return c.Field == name.FieldSpec && !c.Given && len(w) == 1 && w[0] == "pn"
	})
	if at < 1 || cols[at-1].Field != name.FieldConnector && cols[at-1].Field != name.FieldFrom || !prof[at].All(prof[at].Cavities) ||
		slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Field == name.FieldPin || c.Field == name.FieldFromPin }) {
		return
	}
	seen := map[[2]string]bool{}
	for _, r := range rows {
		if at >= len(r.Cells) || r.Cells[at] == "" || r.Cells[at-1] == "" {
			continue
		}
		place := [2]string{r.Cells[at-1], r.Cells[at]}
		if seen[place] {
			return
		}
		seen[place] = true
	}
	cols[at].Field = name.FieldPin
	cols[at].Know()
}
