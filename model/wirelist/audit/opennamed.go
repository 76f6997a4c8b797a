package audit

import (
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// openNamed names the rows of wires with one end that have the name of another connector, where a wire of another table ends: they could
// go there.
func (a *auditor) openNamed() {
	if !slices.ContainsFunc(a.im.Terms, func(t *draft.Term) bool { return t.Titled }) {
		return // no wire has one end for its table
	}
	named := map[string]*draft.Term{}
	for _, t := range a.im.Terms {
		if t.Name.Set && !t.Titled {
			named[table.Fold(t.Name.V)] = t
		}
	}
	rows := map[table.Place][]table.Row{}
	var order []table.Place
	for _, it := range a.im.Items {
		if it.Wire < 0 || it.Signal == "" || it.To.String() != "" || it.From.Term == nil {
			continue
		}
		if t := named[table.Fold(it.Signal)]; t == nil || t == it.From.Term {
			continue
		}
		at := table.Place{File: it.Place.File, Sheet: it.Place.Sheet}
		if rows[at] == nil {
			order = append(order, at)
		}
		rows[at] = append(rows[at], table.Row{Line: it.Place.Row})
	}
	for _, at := range order {
		a.doubt("a wire with one end that is called as another end is", at, "", "kept with one end; look whether it goes there", rows[at])
	}
}
