package grid

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Bands parts a sheet that has tables beside each other, as pin tables of two plugs of
// one device are drawn. Under headings that come again in the same order stand tables of
// their own, each with the titles above it. Any other sheet is given back as it is.
//
//	Left wheel             Right wheel
//	Board  Signal  Color   Board  Signal  Color
//	D0     A       White   D2     A       White
func Bands(h shape.Headings, t table.Table) []table.Table {
	if t.Marked || h.HeadLine() > 0 || h.Numbered() {
		return []table.Table{t} // a person has said where its columns are
	}
	for _, r := range t.Rows {
		if starts := Repeats(h, &t, r); len(starts) > 1 {
			return Cut(t, starts)
		}
		if at := beside(h, &t, r); at > 0 {
			return Cut(t, []int{0, at})
		}
	}
	return []table.Table{t}
}

// beside gives the column in which a table of something else begins, behind an empty one, to the right of the headings
// of a list of wires; 0 where none does.
//
//	Pin | Signal | Colour | | Spare parts | Qty
func beside(h shape.Headings, t *table.Table, r table.Row) int {
	for i := len(r.Cells) - 2; i > 2; i-- {
		if r.Cells[i-1] != "" || r.Cells[i] == "" || !parted(t, []int{0, i}) {
			continue
		}
		other, fuses := false, false
		for _, c := range r.Cells[i:] {
			for _, w := range name.Words(table.Fold(c)) {
				other = other || name.OtherKind(w) == "parts" || name.OtherKind(w) == "counts"
				fuses = fuses || name.OtherKind(w) == "fuses" || strings.HasPrefix(w, "breaker") || w == "lsschalter"
			}
		}
		left, right := table.Row{Cells: r.Cells[:i]}, table.Row{Cells: r.Cells[i:]}
		if h.IsHead(left) && (fuses && headings(right) > 2 || !fuses && !h.IsHead(right) && !saysOfRows(h, right)) &&
			countsItsOwn(t, r, i) {
			return i
		}
		if other && h.IsHead(left) && !h.IsHead(right) {
			return i
		}
	}
	return 0
}

// headings is how many cells of a row are filled. A fuse and its rating alone, behind an empty column, could be those of each row.
func headings(r table.Row) int { n, _ := r.Filled(); return n }

// saysOfRows reports whether a heading is of what somebody says of each row, or marks there: a note, a date, who has checked it.
func saysOfRows(h shape.Headings, r table.Row) bool {
	return slices.ContainsFunc(r.Cells, func(c string) bool {
		w := name.Words(table.Fold(c))
		f := h.Words[strings.Join(w, " ")].Field
		return f == name.FieldNote || f == name.FieldWire || f == name.FieldSignal || f == name.FieldLength || f == name.FieldCable ||
			name.IsSpent(c) || slices.ContainsFunc(w, func(w string) bool {
			return name.OtherKind(w) == "changes" || w == "by" || w == "test"
		})
	})
}

// countsItsOwn reports whether the table that begins in a column of a row of headings has rows of its own below them, two columns or more:
// they begin in the first row, end before those beside them, and none is without its first cell or has that of another.
func countsItsOwn(t *table.Table, head table.Row, from int) bool {
	begun, ended, beside := false, false, 0
	seen := map[string]bool{}
	for _, r := range t.Rows {
		if r.Line == head.Line {
			begun = true
			continue
		}
		if !begun || len(r.Cells) == 0 {
			continue
		}
		first := ""
		if from < len(r.Cells) {
			first = table.Fold(r.Cells[from])
		}
		n, _ := table.Row{Cells: r.Cells[min(from, len(r.Cells)):]}.Filled()
		switch {
		case n == 0:
			left, _ := r.Filled()
			ended = true
			if left > 1 && len(seen) > 0 {
				beside++
			}
		case ended || n < 2 || first == "" || seen[first]:
			return false
		default:
			seen[first] = true
		}
	}
	return headings(table.Row{Cells: head.Cells[from:]}) > 1 && len(seen) > 1 && beside > 0
}

// Cut parts a sheet at some columns. Each cell stays in its column.
func Cut(t table.Table, starts []int) (all []table.Table) {
	for k, from := range starts {
		to := -1
		if k+1 < len(starts) {
			to = starts[k+1]
		}
		part := t
		part.Rows = nil
		for _, row := range t.Rows {
			cells := slices.Clone(row.Cells)
			clear(cells[:min(from, len(cells))])
			if k > 0 && aside(row, starts[k-1], from, endOf(starts, k, row)) >= 0 {
				clear(cells[from:endOf(starts, k, row)])
			}
			if to >= 0 {
				at := aside(row, from, to, endOf(starts, k+1, row))
				cells = cells[:min(to, len(cells))]
				if at >= 0 {
					cells = append(cells, row.Cells[at])
				}
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

// endOf is where the columns of a part of a row end.
func endOf(starts []int, k int, row table.Row) int {
	if k+1 < len(starts) {
		return min(starts[k+1], len(row.Cells))
	}
	return len(row.Cells)
}

// Repeats gives the first column of each group of headings, where the row is nothing but one
// group again and again: a cavity and something about it, which no list of two ends repeats, or
// any headings with an empty column between the groups.
func Repeats(h shape.Headings, t *table.Table, r table.Row) []int {
	if len(r.Cells) < 4 || shape.HasNumber(r) {
		return nil
	}
	var heads []string
	var at []int
	for i, c := range r.Cells {
		if c != "" {
			heads, at = append(heads, table.Fold(c)), append(at, i)
		}
	}
	tail, apart := remarksBehind(h, t, r, at)
	if tail > 0 {
		heads, at = heads[:len(heads)-1], at[:len(at)-1]
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
		group := table.Row{Cells: r.Cells[at[0] : at[n-1]+1]}
		var starts []int
		for i := 0; i < len(at); i += n {
			starts = append(starts, at[i])
		}
		if !h.IsPinGroup(group) && !(parted(t, starts) && !h.HasSides(group)) && !goesOn(h, t, r, starts, group) {
			return nil
		}
		starts[0] = 0
		if apart {
			starts = append(starts, tail)
		}
		return starts
	}
	return nil
}

// remarksBehind is the column of texts that stand beside tables, the last of a row of headings, behind an empty column; 0 where there is
// none. Below a heading of notes they are those of the rows to their left; apart says that they are about the sheet.
//
//	Pin | Signal | | Pin | Signal | | Both plugs are seen
//	1   | Wiper  | | 1   | Washer | | from the wire side.
func remarksBehind(h shape.Headings, t *table.Table, r table.Row, at []int) (tail int, apart bool) {
	if len(at) < 5 || len(at)%2 == 0 {
		return 0, false
	}
	last := at[len(at)-1]
	of := h.Words[strings.Join(name.Words(table.Fold(r.Cells[last])), " ")].Field
	if at[len(at)-2] == last-1 || of != "" && of != name.FieldNote || !parted(t, []int{0, last}) {
		return 0, false
	}
	return last, of == ""
}

// parted reports whether the column before each group but the first is empty in every row.
func parted(t *table.Table, starts []int) bool {
	for _, s := range starts[1:] {
		for _, r := range t.Rows {
			if s-1 < len(r.Cells) && r.Cells[s-1] != "" {
				return false
			}
		}
	}
	return true
}
