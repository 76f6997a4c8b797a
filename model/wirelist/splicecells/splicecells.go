package splicecells

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/value"
)

// Rows are the rows of a sheet, the splices of such rows in the column of the end. Where the table has no column of far ends, the cells
// are the names of splices in full, and Settle takes their column for it.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() || h.Recipe != nil {
		return t.Rows
	}
	rows := t.Rows
	for i, r := range rows {
		at := headAt(r)
		if at < 0 || !h.IsHead(r) {
			continue
		}
		last := i + 1 // the table ends there
		for last < len(rows) && len(rows[last].Cells) > 1 && !isSame(r, rows[last]) {
			last++
		}
		below := rows[i+1 : last]
		cols, _ := h.Columns([]table.Row{r}, len(r.Cells))
		if !areSplices(below, at, r.Cells[at], fieldOf(cols, name.FieldFrom) >= 0) {
			continue
		}
		h.Sides(cols)
		c := columns{at: at, from: fieldOf(cols, name.FieldFrom), to: fieldOf(cols, name.FieldTo)}
		for k, col := range cols {
			switch col.Field {
			case name.FieldTo, name.FieldToPin:
				c.far = append(c.far, k)
			case name.FieldFrom, name.FieldFromPin, name.FieldPin:
				c.near = append(c.near, k)
			case name.FieldRun:
				return t.Rows
			}
		}
		if len(c.near)+len(c.far) == 0 || len(c.far) > 0 && c.to < 0 {
			continue
		}
		rows = slices.Clone(rows)
		for k := i + 1; k < last; k++ {
			rows[k].Cells = c.moved(rows[k].Cells, r.Cells[at])
		}
		if c.to >= 0 && !slices.ContainsFunc(rows[i+1:last], func(r table.Row) bool { return at < len(r.Cells) && r.Cells[at] != "" }) {
			rows[i].Cells = slices.Clone(r.Cells)
			rows[i].Cells[at] = "" // it is told in full
		}
	}
	return rows
}

// columns are those of the splices, of the ends, and all that say something of an end; −1 where there is none.
type columns struct {
	at, from, to int
	near, far    []int
}

// fieldOf is the first column of a field; −1 where none is.
func fieldOf(cols []shape.Column, f name.Field) int {
	return slices.IndexFunc(cols, func(c shape.Column) bool { return c.Field == f })
}

// moved are the cells of a row with its splice in the place of the end that is empty.
func (c columns) moved(cells []string, head string) []string {
	if c.at >= len(cells) || value.IsNothing(cells[c.at]) {
		return cells
	}
	empty := func(cols []int) bool {
		return !slices.ContainsFunc(cols, func(k int) bool { return k < len(cells) && !value.IsNothing(cells[k]) })
	}
	near, far, to := empty(c.near), empty(c.far), c.to
	switch {
	case near == far:
		return cells
	case near && len(c.near) == 0:
		to = c.at
	case near && c.from < 0:
		return cells
	case near:
		to = c.from
	case to < 0:
		to = c.at
	}
	if to >= len(cells) {
		return cells
	}
	out := slices.Clone(cells)
	out[c.at] = ""
	out[to] = full(cells[c.at], head)
	return out
}

// full is the name of a splice with the word for one before it, where it has none and its letters do not say so.
func full(cell, head string) string {
	if name.IsSpliceName(cell) {
		return cell
	}
	for w := range strings.FieldsSeq(head) {
		if slices.Contains(titleline.SpliceWords(), table.Fold(w)) {
			return w + " " + cell
		}
	}
	return "Splice " + cell
}

// isSame reports whether a row is a row of headings once more.
func isSame(head, r table.Row) bool { return slices.Equal(head.Cells, r.Cells) }

// headAt is the column of a row whose cell can be a heading of splices; −1 where none is, and in rows with numbers.
func headAt(r table.Row) int {
	const fewest = 3 // cells: a splice, a connector or a device, a cavity
	if len(r.Cells) < fewest || shape.HasNumber(r) {
		return -1
	}
	return slices.IndexFunc(r.Cells, func(c string) bool {
		is, _ := heads(c)
		return is
	})
}

// heads reports whether a text is a heading of splices, and whether it can be nothing else: a joint may be of a robot.
//
//	Splice   Splice no.   Spleiß Nr.   N° épissure   Joint
func heads(text string) (is, sure bool) {
	const shortest, longest = 3, 24 // bytes (no source)
	if len(text) < shortest || len(text) > longest || strings.ContainsAny(text, "0123456789") {
		return false, false
	}
	for _, w := range name.Words(table.Fold(text)) {
		switch w {
		case "no", "nr", "num", "number", "nummer", "numero", "n", "id", "ref", "name", "point", "to", "at", "in", "the", "via", "di", "de",
			"del", "della", "zu", "an", "punkt", "nome", "nombre", "nom", "#":
		case "joint", "joints", "join", "junction", "node", "las", "lask", "spoj", "splot", "verbinder", "saldatura", "solder", "crimp",
			"samling":
			is = true
		default:
			if w = strings.TrimSuffix(w, "s"); !slices.Contains(titleline.SpliceWords(), w) &&
				!slices.Contains(titleline.SpliceWords(), w+"s") && !isSplice(w) {
				return false, false
			}
			is, sure = true, true
		}
	}
	return is, sure
}

// isSplice reports whether a folded word is one for a splice that no list writes before the number of one.
func isSplice(w string) bool {
	switch w {
	case "splicing", "spleisse", "emenda", "skjot", "jatko", "splejsning", "spleissung", "spleisspunkt", "giunzioni", "giunti", "empalmado",
		"lasverbinding", "splitsing":
		return true
	}
	return false
}

// areSplices reports whether every cell of a column that holds something is the name of a splice, and one or more does. In a list of
// ends a joint that several wires have is none of a robot.
func areSplices(rows []table.Row, at int, head string, ends bool) bool {
	_, sure := heads(head)
	n, other, of := 0, 0, map[string]int{}
	for _, r := range rows {
		if at >= len(r.Cells) || value.IsNothing(r.Cells[at]) {
			continue
		}
		switch c := r.Cells[at]; {
		case name.IsSpliceName(c):
		case isNumber(c) || isDesignator(c):
			of[c]++
			other++
		default:
			return false
		}
		n++
	}
	return n > 0 && (sure || other == 0 || ends && 2*len(of) <= other)
}

// isNumber reports whether a text is a number of three figures at the most.
func isNumber(text string) bool { return len(text) <= 3 && strings.Trim(text, "0123456789") == "" }

// isDesignator reports whether a text is capital letters and a number, as parts are called: no "10A" and no "x2".
func isDesignator(text string) bool { return name.IsDesignator(text) && text == strings.ToUpper(text) }
