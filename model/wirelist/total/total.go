package total

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"contralay/model/unit"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Check holds a line that sums the list up against its rows, column by column: the
// sum of lengths and currents, the number of rows for any other number.
func Check(im *draft.Importer, b *shape.Block, r table.Row) {
	place := table.Place{File: b.Table.File, Sheet: b.Table.Sheet, Row: r.Line}
	rows, wired := rowsAndWires(im, b, r)
	more := 1.0 // of what the rows come to
	for _, cell := range r.Cells {
		if share, ok := shareOf(cell); ok {
			more = 1 + share/100
		}
	}
	var wrong []string
	for i, cell := range r.Cells {
		if cell == "" || i >= len(b.Cols) || isShare(cell) {
			continue
		}
		switch c := b.Cols[i]; c.Field {
		case name.FieldLength:
			u := c.Unit
			if u == "" {
				u = im.Opt.Unit
			}
			said, ok := value.ParseLength(cell, u, b.Mark)
			read := func(s string) (float64, bool) {
				mm, ok := value.ParseLength(s, u, b.Mark)
				return float64(mm), ok
			}
			of, _ := sumOf(b, i, groupAbove(b, r.Line), r.Line, read) // a subtotal sums its group up
			if sum, all := sumOf(b, i, 0, r.Line, read); ok && all && min(math.Abs(more*sum-float64(said)),
				math.Abs(more*of-float64(said))) > 0.5*more {
				wrong = append(wrong, fmt.Sprintf("%s %s, the rows have %s", c.Head, cell,
					value.MmText(unit.Millimetre(math.Round(10*more*sum)/10))))
			}
		case name.FieldCurrent:
			said, ok := value.ParseCurrent(cell, c.Milli, b.Mark)
			read := func(s string) (float64, bool) {
				a, ok := value.ParseCurrent(s, c.Milli, b.Mark)
				return float64(a), ok
			}
			of, _ := sumOf(b, i, groupAbove(b, r.Line), r.Line, read)
			if sum, all := sumOf(b, i, 0, r.Line, read); ok && all && min(math.Abs(sum-float64(said)), math.Abs(of-float64(said))) > 0.01 {
				wrong = append(wrong, fmt.Sprintf("%s %s, the rows have %s", c.Head, cell,
					value.FormatCurrent(unit.Ampere(math.Round(sum*1000)/1000))))
			}
		default:
			if signoff.IsWorth(table.Fold(cell)) {
				continue // what a job cost counts no rows
			}
			ofWires := false
			for w := range strings.FieldsSeq(table.Fold(cell)) {
				ofWires = ofWires || name.CountWord(w) == "wires"
			}
			of, more, _ := strings.Cut(cell, ",")
			if !signoff.IsTotal(of) || strings.ContainsAny(of, "0123456789") {
				of += more // "total, buy 25" is no count
			}
			for w := range strings.FieldsSeq(of) {
				if n, err := strconv.Atoi(strings.Trim(w, ":=()")); err == nil && n != wired && (n != rows || ofWires) &&
					(ofWires || !sumsColumn(b, r.Line, n)) {
					wrong = append(wrong, fmt.Sprintf("%d, the list has %s and %s", n, report.Counted(rows, "row", "rows"),
						report.Counted(wired, "wire", "wires")))
				}
			}
		}
	}
	if len(wrong) > 0 {
		im.Say(report.Warn, "total against the rows", place, strings.Join(wrong, ", "), "the rows hold")
	} else {
		im.Say(report.Note, "total", place, "", "left out")
	}
}

// sumsColumn reports whether some column of plain numbers above a row comes to a sum, wherever in the row that stands:
//
//	Goes to      | AWG | Inches
//	Lamp         | 18  | 40
//	Horn         | 18  | 25
//	Total inches | 65  |
func sumsColumn(b *shape.Block, line, n int) bool {
	for i := range b.Cols {
		sum, all := sumOf(b, i, 0, line, func(s string) (float64, bool) {
			v, err := strconv.ParseFloat(s, 64)
			return v, err == nil
		})
		if all && math.Abs(sum-float64(n)) < 1e-6 {
			return true
		}
	}
	return false
}

// groupAbove is the row before the group of rows that ends above one: a heading between the rows, or another total; 0 where none stands
// there.
//
//	Power    |        |
//	3        | FUSE-1 | 12 in
//	4        | GND    | 8 in
//	Subtotal |        | 20 in
func groupAbove(b *shape.Block, line int) (above int) {
	for _, r := range b.Rows {
		if r.Line >= line {
			break
		}
		if _, first := r.Filled(); shape.IsText(r) || signoff.IsTotal(first) || sums(b, r) {
			above = r.Line
		}
	}
	return above
}

// sumOf adds a column up, of the rows between two; all is false where a cell of it is not understood.
func sumOf(b *shape.Block, col, above, before int, read func(string) (float64, bool)) (sum float64, all bool) {
	for _, r := range b.Rows {
		if _, first := r.Filled(); signoff.IsTotal(first) || sums(b, r) {
			continue
		}
		if r.Line <= above || r.Line >= before || col >= len(r.Cells) || r.Cells[col] == "" || value.IsNothing(r.Cells[col]) {
			continue
		}
		v, ok := read(r.Cells[col])
		if !ok {
			return 0, false
		}
		sum += v
	}
	return sum, true
}
