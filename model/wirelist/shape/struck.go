package shape

import (
	"slices"
	"strings"

	"contralay/model/wirelist/value"
)

// Standing is a table without the rows that its workbook strikes out.
func Standing(t value.Table) value.Table {
	if slices.ContainsFunc(t.Rows, func(r value.Row) bool { return r.Struck }) {
		t.Rows = slices.DeleteFunc(slices.Clone(t.Rows), func(r value.Row) bool { return r.Struck })
	}
	return t
}

// RowText is a row for a message.
func RowText(cells []string) string {
	return value.Tidy(strings.Join(slices.DeleteFunc(slices.Clone(cells), func(c string) bool { return c == "" }), " "))
}
