package report

import (
	"cmp"
	"slices"

	"contralay/model/wirelist/table"
)

// Sort puts the findings in the order of the lists and their rows.
func (r *Report) Sort(tables []table.Table) {
	order := map[[2]string]int{}
	for i, t := range tables {
		order[[2]string{t.File, t.Sheet}] = i
	}
	slices.SortStableFunc(r.Findings, func(a, b Finding) int {
		return cmp.Or(cmp.Compare(order[[2]string{a.File, a.Sheet}], order[[2]string{b.File, b.Sheet}]), cmp.Compare(a.Row, b.Row))
	})
}

// SayOnce takes out that a text beside a table was left out, where the report says what was taken from the same text.
func (r *Report) SayOnce() {
	type text struct {
		at   table.Place
		what string
	}
	used := map[text]bool{}
	for _, f := range r.Findings {
		if f.Did != LeftOut {
			used[text{f.Place, f.What}] = true
		}
	}
	r.Findings = slices.DeleteFunc(r.Findings, func(f Finding) bool {
		return f.Did == LeftOut && f.Level == Note && f.What != "" && used[text{f.Place, f.What}]
	})
}
