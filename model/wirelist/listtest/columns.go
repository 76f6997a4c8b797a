package listtest

import (
	"contralay/model/wirelist/block"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/reading"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
	"fmt"
)

// mostSamples is how many cells show what a column holds (no source).
const mostSamples = 3

// Columns lists the columns of every block of a table and what each is taken for with
// a recipe, which may be nil. A table that names no columns has one block without
// headings, its columns kept as text where no reading is found: a recipe may name them by number.
func Columns(t table.Table, recipe *name.Recipe) []ShownColumn {
	t = signoff.WithoutStruckRows(t)
	h := shape.Headings{Words: words.Vocabulary(), Recipe: recipe.OfColumns()}
	found, over := block.Find(h, t)
	if len(found) == 0 {
		found = []block.Block{{Table: &t, Rows: over}}
	}
	var all []ShownColumn
	for _, one := range found {
		b := reading.Of(h, one)[0].Block
		for i, c := range b.Cols {
			col := ShownColumn{Place: table.Place{File: t.File, Sheet: t.Sheet, Row: b.Head, Column: table.ColumnLetter(i)},
				Number: i + 1,
				Head:   c.Head, Field: c.Field}
			for _, r := range b.Rows {
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

// ShownColumn is one column of a list as a screen shows it, for a person to say what it
// means.
type ShownColumn struct {
	table.Place            // its header row; Row is 0 where the table has none
	Number      int        // from 1
	Head        string     // "" where the table has no headings
	Field       name.Field // what it is taken for
	Samples     []string
}

// Key is the name of the column in a recipe: its heading, else its number.
func (c ShownColumn) Key() string {
	if c.Head != "" {
		return c.Head
	}
	return fmt.Sprintf("#%d", c.Number)
}
