package reading

import (
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/shape"
)

// walls reads a list of the cavities of bulkheads, each named in its row, with what is on either side of it.
func walls(l *look) []shape.Column {
	if len(l.Src.Head) != 1 {
		return nil
	}
	return column.Walls(l.Cols, l.Prof, l.Src.Rows)
}
