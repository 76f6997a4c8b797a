// Package countrow finds the row below a table that counts the cells of its columns, and makes a text of it: it is no row of the table.
package countrow

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Joined are the rows of a table, the last of them joined to a text where it counts the cells above it.
//
//	Net        | Panel | Slew | Horn
//	Slew feed  | 2     | 1    |
//	Slew sense | 3     | 2    |
//	Horn feed  | 5     |      | 1
//	Pins used  | 3     | 2    | 1
//
// Each number is how many cells of its column are filled; that it is so in three columns, or in two beside words that say it, is no chance.
func Joined(rows []table.Row) []table.Row {
	last := len(rows) - 1
	for last > 0 && isEmpty(rows[last]) {
		last--
	}
	if last < 2 || !counts(rows[:last], rows[last]) {
		return rows
	}
	rows = slices.Clone(rows)
	rows[last].Cells = []string{shape.RowText(rows[last].Cells)}
	return rows
}

// counts reports whether a row counts the cells of the rows above it.
func counts(above []table.Row, r table.Row) bool {
	said, columns, right := "", 0, true
	for i, c := range r.Cells {
		n, err := strconv.Atoi(strings.TrimSpace(c))
		switch {
		case c == "":
		case said == "" && err != nil && strings.Trim(c, "0123456789") == c:
			said = c
		case said == "" || err != nil:
			return false
		default:
			columns++
			right = right && n == filled(above, i)
		}
	}
	if said == "" || columns < 2 {
		return false
	}
	pins := slices.ContainsFunc(name.Words(table.Fold(said)), func(w string) bool { return name.CountWord(w) != "" })
	return right && columns > 2 || saysCount(said) && (right || pins) // people miscount
}

// filled is how many rows say something in a column.
func filled(rows []table.Row, i int) (n int) {
	for _, r := range rows {
		if i < len(r.Cells) && !value.IsNothing(r.Cells[i]) && !shape.IsText(r) {
			n++
		}
	}
	return n
}

// isEmpty reports whether a row says nothing.
func isEmpty(r table.Row) bool { n, _ := r.Filled(); return n == 0 }

// saysCount reports whether a text has a word for what is counted or used. From memory, no source.
func saysCount(text string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(text)), func(w string) bool {
		switch w {
		case "used", "count", "number", "wired", "filled", "total", "totals", "sum", "belegt", "belegte", "anzahl", "summe", "utilisees",
			"utilises", "nombre", "usadas", "usados", "cantidad", "usati", "usate", "numero", "gebruikt", "aantal", "antal", "brugt":
			return true
		}
		return false
	})
}
