package connectto

import (
	"slices"
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// leastRows is how many lines stand below a sentence where that is no chance (no source).
const leastRows = 3

// Told are rows that a person should look at.
type Told struct {
	Unnamed [][]table.Row // that go to a board without a name
	Spoken  [][]table.Row // whose far end stands in a sentence
}

// Rows are the rows of a sheet, those of such lines with headings of their own.
func Rows(h shape.Headings, t *table.Table) (rows []table.Row, told Told) {
	rows = t.Rows
	if h.HeadLine() > 0 || h.Numbered() || h.Recipe != nil {
		return rows, told
	}
	thing := "" // of the lines above
	for i := 1; i < len(rows); i++ {
		made, of, n := drawn(rows, i, thing)
		above := rows[i-1]
		if made == nil && (len(above.Cells) != 1 || !strings.HasSuffix(above.Cells[0], ":")) {
			continue // most rows
		}
		if made == nil {
			made, of, n = arrows(t, rows, i)
		}
		if made == nil {
			if made, n = attached(t, rows, i); made != nil {
				told.Unnamed = append(told.Unnamed, made[1:])
			}
		}
		if made == nil {
			made, n = headed(t, rows, i)
		}
		if made == nil {
			var spoken []table.Row
			if made, spoken, n = located(t, rows, i); spoken != nil {
				told.Spoken = append(told.Spoken, spoken)
			}
		}
		if made == nil {
			continue
		}
		if of != "" {
			thing = of
		}
		rows = slices.Concat(rows[:i], made, rows[i+n:])
		i += len(made) - 1
	}
	return rows, told
}

// head is a row of headings on the line of the first row below it.
func head(t *table.Table, line int, cells ...string) table.Row {
	return table.Row{Line: line, Cells: cells, Made: true, First: t.Marked, Ruled: t.Marked}
}

// cellsOf is a row of a table in the place of a line of text.
func cellsOf(r table.Row, cells ...string) table.Row {
	r.Cells, r.Prose, r.Point, r.Deep, r.Gap, r.Drawn, r.Raw = cells, false, false, 0, nil, nil, ""
	return r
}

// lastWord is the last word of a name, folded, without the sign of several.
func lastWord(text string) string {
	w := strings.Fields(table.Fold(text))
	if len(w) == 0 {
		return ""
	}
	return strings.TrimSuffix(w[len(w)-1], "s")
}
