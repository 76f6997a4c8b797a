package paper

// align is how the cells of a column stand on paper.
type align int

const (
	toLeft  align = iota
	toRight       // figures
	byHand        // an empty cell that is written in at the bench
)

// column is one column of a table: its head, how its cells stand, and the cell that a row
// has in it. The three stand together, so that none can be moved without the others.
type column[R any] struct {
	head  string
	align align
	cell  func(row R) string // nil where the cell stays empty
}

// tableOf is a table, of which file, title and note are given, with its columns filled from
// rows: a cell of each column for each row.
func tableOf[R any](t Table, columns []column[R], rows []R) Table {
	for _, c := range columns {
		t.Head = append(t.Head, c.head)
		t.align = append(t.align, c.align)
	}
	for _, row := range rows {
		cells := make([]string, len(columns))
		for k, c := range columns {
			if c.cell != nil {
				cells[k] = c.cell(row)
			}
		}
		t.add(cells...)
	}
	return t
}
