package list

import (
	"contralay/model/catalogue"
)

// Align is how the cells of a column stand on paper.
type Align int

// How cells stand.
const (
	ToLeft  Align = iota
	ToRight       // figures
	ByHand        // an empty cell that is written in at the bench
)

// Column is one column of a table: its head, how its cells stand, and the cell that a row
// has in it. They stand together, so that none can be moved without the others. Paper and file
// have the same columns, but where it says otherwise: a page has room for "5.6 to 6.1", a file
// wants one value a cell.
type Column[R any] struct {
	Head     string
	Align    Align
	Cell     func(row R) string             // nil where the cell stays empty
	Standing func(row R) catalogue.Standing // how far its figure is to be trusted: a mark on paper, a column of a file
	file     []Column[R]                    // what a file has in its place, where inFile
	inFile   bool
	notPaper bool
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

// Stands is the column with the standing of its figure.
func (c Column[R]) Stands(standing func(row R) catalogue.Standing) Column[R] {
	c.Standing = standing
	return c
}

// InFile is the column of a page, in whose place a file has others; none: it has none.
func (c Column[R]) InFile(columns ...Column[R]) Column[R] {
	c.file, c.inFile = columns, true
	return c
}

// FileOnly is columns that a file has and a page does not.
func FileOnly[R any](columns ...Column[R]) Column[R] {
	return Column[R]{file: columns, inFile: true, notPaper: true}
}

// onPaper is the columns of a page.
func onPaper[R any](columns []Column[R]) []Column[R] {
	var out []Column[R]
	for _, c := range columns {
		if !c.notPaper {
			out = append(out, c)
		}
	}
	return out
}

// inFile is the columns of a file: one that has a standing is followed by it.
func inFile[R any](columns []Column[R]) []Column[R] {
	var out []Column[R]
	for _, c := range columns {
		if c.inFile {
			out = append(out, inFile(c.file)...)
			continue
		}
		out = append(out, c)
		if stands := c.Standing; stands != nil {
			cell := c.Cell
			out[len(out)-1].Standing = nil
			out = append(out, Text("standing of "+bare(c.Head), func(row R) string {
				if Value(cell(row)) == "" {
					return ""
				}
				return string(stands(row))
			}))
		}
	}
	return out
}

// Of is a table, of which file, title and note are given, with its columns filled from
// rows: a cell of each column for each row.
func Of[R any](t Table, columns []Column[R], rows []R) Table { return OfBoth(t, columns, rows, rows) }

// OfBoth is the same with other rows in the file than on paper: a row of a file holds one wire
// where a line of a page holds several.
func OfBoth[R any](t Table, columns []Column[R], paper, file []R) Table {
	shown := onPaper(columns)
	for _, c := range shown {
		t.Head = append(t.Head, c.Head)
		t.Align = append(t.Align, c.Align)
	}
	for _, row := range paper {
		t.Add(cells(shown, row, func(c Column[R]) string {
			if c.Standing == nil {
				return c.Cell(row)
			}
			cell := c.Cell(row)
			if Value(cell) == "" {
				return cell
			}
			return cell + Mem(c.Standing(row))
		})...)
	}
	filed := inFile(columns)
	for _, c := range filed {
		t.Filed.Head = append(t.Filed.Head, c.Head)
		t.Filed.Figure = append(t.Filed.Figure, c.Align == ToRight)
	}
	for _, row := range file {
		t.Filed.Rows = append(t.Filed.Rows, cells(filed, row, func(c Column[R]) string { return Value(c.Cell(row)) }))
	}
	return t
}

func cells[R any](columns []Column[R], row R, cell func(Column[R]) string) []string {
	out := make([]string, len(columns))
	for k, c := range columns {
		if c.Cell != nil {
			out[k] = cell(c)
		}
	}
	return out
}
