package cablelines

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// FillDown writes the name of a cable into the lines of its cores below the first, where that line alone names it, and so the cells of
// a column that nobody knows and that only these lines have: they say what the cable is. ok is false where no column counts the cores of
// each cable.
//
//	Cable | Make-up      | Core | From | To
//	W1    | twisted pair | 1    | J1-1 | M-A
//	      |              | 2    | J1-2 | M-B
//	W2    | twisted pair | 1    | J1-3 | M-C
//
//	Cable | Type        | Core  | From | To
//	W1    | 2 x 1.5 mm² | brown | J1-1 | M-A
//	      |             | black | J1-2 | M-B
func FillDown(h shape.Headings, head table.Row, rows []table.Row) (out []table.Row, ok bool) {
	all := rows
	if i := slices.IndexFunc(rows, isTotal); i >= 0 && !slices.ContainsFunc(rows[i:], func(r table.Row) bool {
		return !isTotal(r) && !shape.IsText(r)
	}) {
		rows = rows[:i]
	}
	if len(rows) < 3 { // two cables, one of two cores
		return all, false
	}
	cols, _ := h.Columns([]table.Row{head}, 0)
	h.Sides(cols)
	at := slices.IndexFunc(cols, func(c shape.Column) bool { return c.Field == name.FieldCable })
	b := shape.Block{Cols: cols}
	if at < 0 || !b.Has(name.FieldFrom, name.FieldFromPin, name.FieldRun) || comesAgain(rows, at) || !countsCores(cols, rows, at) {
		return all, false
	}
	fill := []int{at}
	for i, c := range cols {
		says := !c.Known() || c.Field == name.FieldSpec || c.Field == name.FieldGauge
		if i != at && c.Head != "" && says && besideNames(rows, at, i) {
			fill = append(fill, i)
		}
	}
	out = slices.Clone(all)
	var of *table.Row
	for i, r := range rows {
		switch {
		case shape.IsText(r) && words.SaysNoCable(table.Fold(shape.RowText(r.Cells))):
			of = nil
		case cell(r, at) != "":
			of = &rows[i]
		case of == nil || shape.IsText(r):
			of = nil
		default:
			out[i].Cells = slices.Clone(r.Cells)
			for _, k := range fill {
				if k < len(out[i].Cells) && out[i].Cells[k] == "" {
					out[i].Cells[k] = cell(*of, k)
				}
			}
		}
	}
	return out, true
}

// isTotal reports whether a row begins with a word for a sum.
func isTotal(r table.Row) bool { _, first := r.Filled(); return signoff.IsTotal(first) }

// comesAgain reports whether a name stands in two rows, one below the other: a row without one is then in no cable.
func comesAgain(rows []table.Row, at int) bool {
	for i := 1; i < len(rows); i++ {
		if c := cell(rows[i], at); c != "" && c == cell(rows[i-1], at) {
			return true
		}
	}
	return false
}

// countsCores reports whether some column has a cell in each line of cores, no cell twice in one cable, and is headed as cores or has the
// same cells in two cables or more; every other line has no name of a cable, and the first has one.
func countsCores(cols []shape.Column, rows []table.Row, at int) bool {
	for i, c := range cols {
		cores := column.HeadsCores(c.Head)
		if i == at || c.Head == "" || c.Known() && c.Field != name.FieldWire && c.Field != name.FieldNumber && !cores {
			continue
		}
		in := map[string]bool{}
		cables, below, again, first := 0, 0, 0, ""
		ok := true
		for _, r := range rows {
			if n, _ := r.Filled(); n < 2 || shape.IsText(r) {
				continue
			}
			core := cell(r, i)
			switch named := cell(r, at) != ""; {
			case named:
				cables++
				if clear(in); cables == 1 {
					first = core
				} else if core != "" && core == first {
					again++
				}
			case cables == 0 || core == "":
				ok = false
			default:
				below++
			}
			ok = ok && (core == "" || !in[core])
			in[core] = true
		}
		if ok && cables > 1 && below > 0 && first != "" && (again > 0 || cores) {
			return true
		}
	}
	return false
}

// besideNames reports whether a column has cells in the lines that name a cable, and in no other.
func besideNames(rows []table.Row, at, i int) bool {
	n := 0
	for _, r := range rows {
		if cell(r, i) == "" || shape.IsText(r) {
			continue
		}
		if cell(r, at) == "" {
			return false
		}
		n++
	}
	return n > 1
}

// cell is a cell of a row; "" where the row is shorter.
func cell(r table.Row, i int) string {
	if i < len(r.Cells) {
		return r.Cells[i]
	}
	return ""
}
