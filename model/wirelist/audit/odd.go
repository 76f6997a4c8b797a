package audit

import (
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// kind is what a cell looks like, whatever its column means.
type kind uint8

const (
	empty kind = iota
	number
	colour
	code // short, with a digit
	word
	prose
)

// leastRows is how many rows show what the cells of a column are (no source).
const leastRows = 3

// odd names the rows whose cells are others than those of their neighbours: two or more of them are not what the column
// has otherwise, as where a cell is missing or one too many stands in the row.
func (a *auditor) odd(t *Table) {
	wide := 0
	rows := make([]int, 0, len(t.Rows))
	for i, r := range t.Rows {
		if a.row(t, r).wires != nil {
			rows = append(rows, i)
			wide = max(wide, len(r.Cells))
		}
	}
	if len(rows) <= leastRows {
		return
	}
	flat := make([]kind, len(rows)*wide)
	usual := make([][prose + 1]int, wide)
	for k, at := range rows {
		of := flat[k*wide : (k+1)*wide]
		for i, c := range t.Rows[at].Cells {
			of[i] = a.kindOf(c, t)
		}
		for i := range wide {
			usual[i][of[i]]++
		}
	}
	var odd []table.Row
	for k, at := range rows {
		n, filled := 0, 0
		for i, is := range flat[k*wide : (k+1)*wide] {
			if column.MayBeEmpty(t.Cols, t.Rows[at], i) && (is == empty || usual[i][empty] == slices.Max(usual[i][:])) {
				continue
			}
			if others := len(rows) - 1; usual[i][is] == 1 && slices.Max(usual[i][:]) == others && others >= leastRows ||
				others > 8 && 20*usual[i][is] < len(rows) {
				if n++; is != empty {
					filled++
				}
			}
		}
		if n > 1 && filled > 0 && !(t.Points && a.isSpare(t, t.Rows[at])) {
			odd = append(odd, t.Rows[at])
		}
	}
	if 5*len(odd) <= len(rows) || len(odd) == 1 {
		a.doubt("a row unlike the others of its table", t.At, "",
			"read like them; look whether a cell of it is missing or in another column",
			odd)
	}
}

// isSpare reports whether a row tells wires that go nowhere yet: a line of text says less of them.
func (a *auditor) isSpare(t *Table, r table.Row) bool {
	return !slices.ContainsFunc(a.row(t, r).wires, func(i int) bool { return a.im.H.Wires[i].Role.V != model.RoleSpare })
}

// kindOf is what a cell looks like.
func (a *auditor) kindOf(cell string, t *Table) kind {
	if cell == "" {
		return empty
	}
	if len(t.Key) > 0 {
		return kindOf(t.Key.InEnglish(cell), t.Lang)
	}
	k, ok := a.kinds[cell]
	if !ok {
		k = kindOf(cell, t.Lang)
		a.kinds[cell] = k
	}
	return k
}

// kindOf is what a cell looks like.
func kindOf(cell, lang string) kind {
	switch {
	case value.IsNothing(cell):
		return empty
	case cell[0] <= '9' && strings.Trim(cell, "0123456789.,") == "":
		return number
	case strings.Count(cell, " ") > 2 && len(strings.Fields(cell)) > 3:
		return prose
	}
	if c, ok := value.ParseColour(cell, lang); ok && len(c) > 0 {
		return colour
	}
	if value.HasDigit(cell) {
		return code
	}
	return word
}
