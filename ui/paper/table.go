package paper

// Table is one list of the build sheet: printed in it, and written beside it as a file of
// its own. Every row has as many cells as there are heads.
type Table struct {
	File  string // its name as a file, without ending; "" stays on the sheet alone
	Title string
	Note  string // said under the title
	Head  []string
	Rows  [][]string
	Sheet string  // number, revision and identity of the sheet it belongs to: a column of its file
	align []align // of each column
}

func (t *Table) add(cells ...string) { t.Rows = append(t.Rows, cells) }
