package settle

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/table"
)

// What the cells of a pin table say of its connectors.

// AllParted reports whether every cell of a column is a connector and a cavity.
func (l *Look) AllParted(i int) bool { return column.AllParted(l.Src.Rows, i) }

// Rest is a row without two of its cells.
func Rest(cells []string, without ...int) string {
	var b strings.Builder
	for i, c := range cells {
		if !slices.Contains(without, i) {
			b.WriteString(table.Fold(strings.TrimSpace(c)) + "\x00")
		}
	}
	return b.String()
}

// Designators counts the cells of a column that are names of connectors and devices.
func (l *Look) Designators(i int) int { return column.Designators(l.Src.Rows, i) }
