package block

import (
	"contralay/model/wirelist/alike"
	"contralay/model/wirelist/table"
)

// drawnLines are what the rows from one on say that draw an arrow from the cavities of what stands above them; nil where they do not, or
// nothing stands above.
func (f *finder) drawnLines(i int) []alike.Line {
	if len(f.pending) == 0 && (f.current == nil || len(f.current.Rows) == 0) && len(f.path) == 0 {
		return nil
	}
	return alike.DrawnFrom(f.t.Rows, i)
}

// listDrawn makes the block of such rows.
func (f *finder) listDrawn(rows []table.Row, lines []alike.Line) {
	for i, r := range rows {
		f.cavities[r.Line] = lines[i]
	}
	together{f}.listAlike(rows)
}
