package wirelist

import "fmt"

// Column is one column of a list as a screen shows it, for a person to say what it
// means.
type Column struct {
	Place          // its header row; Row is 0 where the table has none
	Number  int    // from 1
	Head    string // "" where the table has no headings
	Field   Field  // what it is taken for
	Samples []string
}

// Key is the name of the column in a recipe: its heading, else its number.
func (c Column) Key() string {
	if c.Head != "" {
		return c.Head
	}
	return fmt.Sprintf("#%d", c.Number)
}

// mostSamples is how many cells show what a column holds (no source).
const mostSamples = 3

// Columns lists the columns of every block of a table and what each is taken for with
// a recipe, which may be nil. A table that names no columns has one block without
// headings, its columns kept as text: a recipe may name them by number.
func Columns(t Table, recipe *Recipe) []Column {
	t = standing(t)
	h := headings{words: vocabulary(), recipe: recipe.ofColumns()}
	var blocks []*block
	for _, part := range h.sideBySide(t) {
		more, _ := h.blocks(&part)
		blocks = append(blocks, more...)
	}
	if len(blocks) == 0 {
		n := 0
		for _, r := range t.Rows {
			n = max(n, len(r.Cells))
		}
		b := &block{table: &t, rows: t.Rows, cols: make([]column, n)}
		for i := range b.cols {
			b.cols[i].field = FieldKeep
		}
		blocks = []*block{b}
	}
	var all []Column
	for _, b := range blocks {
		for i, c := range b.cols {
			col := Column{Place: Place{File: t.File, Sheet: t.Sheet, Row: b.head, Column: columnLetter(i)}, Number: i + 1, Head: c.head, Field: c.field}
			for _, r := range b.rows {
				if i < len(r.Cells) && r.Cells[i] != "" && len(col.Samples) < mostSamples {
					col.Samples = append(col.Samples, r.Cells[i])
				}
			}
			if col.Head != "" || len(col.Samples) > 0 {
				all = append(all, col)
			}
		}
	}
	return all
}
