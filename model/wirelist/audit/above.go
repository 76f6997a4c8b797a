package audit

import (
	"slices"

	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
)

// above makes one doubt of a sheet of all that was taken from the row above: a person should look whether it is of these
// rows too.
func (a *auditor) above() {
	type group struct {
		rule string
		at   table.Place
		what []string
		rows []table.Row
	}
	var groups []group
	a.im.Rep.Findings = slices.DeleteFunc(a.im.Rep.Findings, func(f report.Finding) bool {
		if f.Did != takenFromAbove {
			return false
		}
		at := table.Place{File: f.File, Sheet: f.Sheet}
		i := slices.IndexFunc(groups, func(g group) bool { return g.rule == f.Rule && g.at == at })
		if i < 0 {
			i = len(groups)
			groups = append(groups, group{rule: f.Rule, at: at})
		}
		g := &groups[i]
		if f.What != "" && !slices.Contains(g.what, f.What) {
			g.what = append(g.what, f.What)
		}
		g.rows = append(g.rows, table.Row{Line: f.Row})
		return true
	})
	for _, g := range groups {
		a.doubt(g.rule, g.at, some(g.what), takenFromAbove, g.rows)
	}
}

// takenFromAbove is what the report says was done with a cell that is empty, or has a mark for it.
const takenFromAbove = "taken from the row above"
