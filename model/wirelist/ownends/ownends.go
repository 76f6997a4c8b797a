// Package ownends makes tables of rows without headings that begin with a cavity of one connector each, "LOG1-1", "LOG1-2".
package ownends

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/rising"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Who writes the pins of a plug in a letter leaves the headings out: the first cell says the plug and its cavity, and the others say by
// themselves what they are.
//
//	LOG1-1 | brake front | white | sensor F pin C
//	LOG1-2 | brake rear  | red   | sensor R pin C
//	LOG1-3 | 5 V         | blue  | splice S1

// least is how many such rows follow each other where that is no chance (no source).
const least = 3

// Rows are the rows of a sheet with headings above each run of such rows that can be told by its cells; any other row is as it was, but
// for the texts below a run, which are none of it. told are the rows of each run.
func Rows(h shape.Headings, t *table.Table) (rows []table.Row, told [][]table.Row) {
	if h.HeadLine() > 0 || h.Numbered() || t.Marked {
		return t.Rows, nil
	}
	var out []table.Row // nil as long as nothing is put in
	from := 0
	for i := 0; i+1 < len(t.Rows); i++ {
		n := run(t.Rows[i:])
		if n < least {
			i += max(n-1, 0)
			continue
		}
		if head := heads(t.Rows[i : i+n]); head != nil && !headed(h, t.Rows, i) {
			out = append(out, t.Rows[from:i]...)
			out = append(out, table.Row{Line: t.Rows[i].Line, Cells: head, First: true})
			out = append(out, t.Rows[i:i+n]...)
			told = append(told, t.Rows[i:i+n])
			for from = i + n; from < len(t.Rows); from++ {
				r := t.Rows[from]
				if k, _ := r.Filled(); k > 1 {
					break
				}
				r.Prose = true
				out = append(out, r)
			}
		}
		i += n - 1
	}
	if out == nil {
		return t.Rows, nil
	}
	return append(out, t.Rows[from:]...), told
}

// run is how many rows from the first on count the cavities of one connector, one below the other.
func run(rows []table.Row) int {
	n := 1
	for n < len(rows) && rows[n].Line == rows[n-1].Line+1 && rows[n].Cells[0] != "" && rows[n-1].Cells[0] != "" &&
		rising.Next(rows[n-1], rows[n]) {
		n++
	}
	return n
}

// headed reports whether a row of several cells stands right above a row, or headings anywhere above it.
func headed(h shape.Headings, rows []table.Row, i int) bool {
	if i > 0 && rows[i].Line == rows[i-1].Line+1 {
		if n, _ := rows[i-1].Filled(); n > 1 {
			return true
		}
	}
	return slices.ContainsFunc(rows[:i], h.IsHead)
}

// heads are the headings of such rows: a column of colours, one of sizes or none, one of names, and behind it one of far ends or none.
// nil where the cells are anything else.
func heads(rows []table.Row) []string {
	width := 0
	for _, r := range rows {
		width = max(width, len(r.Cells))
	}
	out := make([]string, width)
	out[0] = "From"
	var texts []int
	for i := 1; i < width; i++ {
		colours, sizes, n := kinds(rows, i)
		switch {
		case n == 0:
		case colours == n && !slices.Contains(out, "Colour"):
			out[i] = "Colour"
		case sizes == n && !slices.Contains(out, "Size"):
			out[i] = "Size"
		case numbers(rows, i):
			return nil // sizes without their unit, or anything else
		default:
			texts = append(texts, i)
		}
	}
	if !slices.Contains(out, "Colour") || len(texts) == 0 || len(texts) > 2 {
		return nil
	}
	out[texts[0]] = "Signal"
	if len(texts) == 2 {
		if !ends(rows, texts[1]) {
			return nil
		}
		out[texts[1]] = "To"
	}
	return out
}

// numbers reports whether a cell of a column is a number alone.
func numbers(rows []table.Row, i int) bool {
	return slices.ContainsFunc(rows, func(r table.Row) bool {
		return i < len(r.Cells) && !value.IsNothing(r.Cells[i]) && strings.Trim(r.Cells[i], "0123456789.,/ ") == ""
	})
}

// kinds counts the cells of a column that are colours, and those that are sizes with their unit, of n that say something.
func kinds(rows []table.Row, i int) (colours, sizes, n int) {
	for _, r := range rows {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) {
			continue
		}
		c := r.Cells[i]
		n++
		if _, ok := value.ParseColour(c, ""); ok && strings.Trim(c, "0123456789/ ") != "" {
			colours++
		} else if value.SizeWithin(c, value.MarkUnknown) != "" && strings.IndexByte("0123456789", c[0]) >= 0 {
			sizes++
		}
	}
	return colours, sizes, n
}

// ends reports whether half of the cells of a column are ends with their cavity, or splices.
func ends(rows []table.Row, i int) bool {
	n, of := 0, 0
	for _, r := range rows {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) {
			continue
		}
		n++
		last := strings.LastIndexByte(r.Cells[i], ' ')
		if _, pin, ok := name.SplitEnd(r.Cells[i]); ok && name.IsCavity(pin) || name.IsSpliceName(r.Cells[i]) ||
			last > 0 && name.IsCavity(r.Cells[i][last+1:]) { // "bow lamp 1"
			of++
		}
	}
	return n > 0 && 2*of >= n
}
