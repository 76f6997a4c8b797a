package paper

// Table is one list of the build sheet: printed in it, and written beside it as a file of
// its own. Every row has as many cells as there are heads.
type Table struct {
	File  string // its name as a file, without ending; "" stays on the sheet alone
	Title string
	Note  string // said under the title
	Head  []string
	Rows  [][]string
	Right map[int]bool // columns of numbers
	Blank map[int]bool // columns that are written in by hand
}

func (t *Table) add(cells ...string) { t.Rows = append(t.Rows, cells) }

// right marks columns of numbers.
func right(cols ...int) map[int]bool {
	out := map[int]bool{}
	for _, c := range cols {
		out[c] = true
	}
	return out
}
