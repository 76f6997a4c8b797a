package signoff

import (
	"slices"

	"contralay/model/wirelist/table"
)

// WithoutStruckRows is a table without the rows that its workbook strikes out.
func WithoutStruckRows(t table.Table) table.Table {
	if slices.ContainsFunc(t.Rows, func(r table.Row) bool { return r.Struck }) {
		t.Rows = slices.DeleteFunc(slices.Clone(t.Rows), func(r table.Row) bool { return r.Struck })
	}
	return t
}
