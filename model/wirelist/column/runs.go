package column

import (
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Runs counts the cells of a column that have both ends of a wire.
func Runs(rows []table.Row, i int) (n int) {
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i < len(r.Cells) && shape.IsRun(r.Cells[i]) {
			n++
		}
	}
	return n
}
