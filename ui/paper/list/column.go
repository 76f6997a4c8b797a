package list

// Align is how the cells of a column stand on paper.
type Align int

// How cells stand.
const (
	ToLeft  Align = iota
	ToRight       // figures
	ByHand        // an empty cell that is written in at the bench
)

// Column is one column of a table: its head, how its cells stand, and the cell that a row
// has in it. The three stand together, so that none can be moved without the others.
type Column[R any] struct {
	Head  string
	Align Align
	Cell  func(row R) string // nil where the cell stays empty
}

// Text is a column of words.
func Text[R any](head string, cell func(row R) string) Column[R] {
	return Column[R]{Head: head, Align: ToLeft, Cell: cell}
}

// Figure is a column of figures.
func Figure[R any](head string, cell func(row R) string) Column[R] {
	return Column[R]{Head: head, Align: ToRight, Cell: cell}
}

// Blank is a column that is written in at the bench.
func Blank[R any](head string) Column[R] { return Column[R]{Head: head, Align: ByHand} }

// Of is a table, of which file, title and note are given, with its columns filled from
// rows: a cell of each column for each row.
func Of[R any](t Table, columns []Column[R], rows []R) Table {
	for _, c := range columns {
		t.Head = append(t.Head, c.Head)
		t.Align = append(t.Align, c.Align)
	}
	for _, row := range rows {
		cells := make([]string, len(columns))
		for k, c := range columns {
			if c.Cell != nil {
				cells[k] = c.Cell(row)
			}
		}
		t.Add(cells...)
	}
	return t
}
