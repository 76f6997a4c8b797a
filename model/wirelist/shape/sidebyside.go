package shape

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// SideBySide parts a sheet that has tables beside each other, as pin tables of two plugs of
// one device are drawn: under headings that come again in the same order stand tables of
// their own, each with the titles above it. Any other sheet is given back as it is.
func (h Headings) SideBySide(t table.Table) []table.Table {
	if h.Recipe != nil && (h.Recipe.HeaderRow > 0 || h.numbered(&t) != nil) {
		return []table.Table{t} // a person has said where its columns are
	}
	for _, r := range t.Rows {
		starts := h.repeats(r)
		if len(starts) < 2 {
			continue
		}
		var all []table.Table
		for k, from := range starts {
			to := -1
			if k+1 < len(starts) {
				to = starts[k+1]
			}
			part := t
			part.Rows = nil
			for _, row := range t.Rows {
				cells := slices.Clone(row.Cells) // each cell stays in its column
				clear(cells[:min(from, len(cells))])
				if to >= 0 {
					cells = cells[:min(to, len(cells))]
				}
				row.Cells = cells
				if n, _ := row.Filled(); n > 0 {
					part.Rows = append(part.Rows, row)
				}
			}
			all = append(all, part)
		}
		return all
	}
	return []table.Table{t}
}

// repeats gives the first column of each group of headings, where the row is nothing but one
// group again and again: a cavity and something about it, which no list of two ends repeats.
func (h Headings) repeats(r table.Row) []int {
	if hasNumber(r) {
		return nil
	}
	var heads []string
	var at []int
	for i, c := range r.Cells {
		if c != "" {
			heads, at = append(heads, table.Fold(c)), append(at, i)
		}
	}
	for n := 2; 2*n <= len(heads); n++ {
		if len(heads)%n != 0 {
			continue
		}
		same := true
		for i := n; i < len(heads); i++ {
			same = same && heads[i] == heads[i-n]
		}
		if !same {
			continue
		}
		cols, _, ok := h.header(table.Row{Cells: r.Cells[at[0] : at[n-1]+1]})
		has := func(f name.Field) bool {
			return slices.ContainsFunc(cols, func(c Column) bool { return c.Field == f })
		}
		if !ok || !has(name.FieldPin) || !has(name.FieldSignal) && !has(name.FieldWire) && !has(name.FieldTo) && !has(name.FieldGauge) {
			return nil
		}
		var starts []int
		for i := 0; i < len(at); i += n {
			starts = append(starts, at[i])
		}
		starts[0] = 0
		return starts
	}
	return nil
}
