package list

// Table is one list of the build sheet: printed in it, and written beside it as a file of
// its own. Every row has as many cells as there are heads.
type Table struct {
	File  string // its name as a file, without ending; "" stays on the sheet alone
	Title string
	Note  string // said under the title
	Head  []string
	Rows  [][]string
	Sheet string  // number, revision and identity of the sheet it belongs to: a column of its file
	Align []Align // of each column
	Filed Filed
}

// Filed is a table as its file has it: one value a cell, nothing where there is none.
type Filed struct {
	Head   []string
	Figure []bool // of each column: its cells are numbers, or empty
	Rows   [][]string
}

// Add puts one row at the end of a table: a cell for each head.
func (t *Table) Add(cells ...string) { t.Rows = append(t.Rows, cells) }
