package column

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// IsLoneCavity reports whether a row of one short text is a cavity that nothing stands beside, and no text between the rows: it is
// called as another of its column, but for the pole or the number behind.
//
//	ENA+ | Enable | OUT 14
//	ENA- |        |
func IsLoneCavity(b *shape.Block, r table.Row) bool {
	const longest = 6 // of what a board calls a pad (no source)
	i := slices.IndexFunc(r.Cells, func(c string) bool { return c != "" })
	if i < 0 || i >= len(b.Cols) || r.Prose || r.Level > 0 || len(r.Cells[i]) > longest || strings.Contains(r.Cells[i], " ") {
		return false
	}
	switch b.Cols[i].Field {
	case name.FieldPin, name.FieldFromPin, name.FieldToPin:
	default:
		return false
	}
	bare := strings.TrimRight(r.Cells[i], "+-0123456789")
	return bare != r.Cells[i] && bare != "" && slices.ContainsFunc(b.Rows[:min(len(b.Rows), MostLooked)], func(o table.Row) bool {
		n, _ := o.Filled()
		return n > 1 && i < len(o.Cells) && o.Cells[i] != r.Cells[i] && strings.TrimRight(o.Cells[i], "+-0123456789") == bare
	})
}
