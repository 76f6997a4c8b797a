package block

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/tail"
)

// asides finds what stands between the tables and is none of them.
type asides struct{ *finder }

// tail is how many rows from one on are a small table without headings below a list of wires from end to end, or below one of cavities:
// behind a gap, and behind its title where it has one, they fill half of the columns or fewer, and each is a fuse with its rating, begins
// with how much there is of something, or says nothing of a wire. Steps in the columns of the list are such a table, too, and facts
// below a title that says so.
//
//	Wire | From  | To   | mm² | Colour | Length
//	1    | Panel | Lamp | 1   | red    | 300 mm
//
//	Fuses
//	F1   | 8 A   | F2   | 8 A
func (f asides) tail(i int) (n int) {
	rows, c := f.t.Rows, f.current
	if c == nil || f.t.Marked || len(c.Head) == 0 || len(c.Rows) == 0 || f.h.HeadLine() > 0 || shape.IsText(rows[i]) {
		return 0
	}
	if n := tail.Steps(rows, i, c.Rows, f.isHead); n > 0 {
		return n
	}
	title, at := "", i
	if shape.IsText(rows[i-1]) {
		_, title = rows[i-1].Filled()
		at--
	}
	if at == 0 || rows[at].Line == rows[at-1].Line+1 && !tail.EndsBill(f.aside, rows[at].Line) && !tail.SaysChanges(title) {
		return 0
	}
	wide := !f.narrows(i) && !tail.Titles(title)
	cols, _ := f.h.Columns(c.Head, 0)
	f.h.Sides(cols)
	b := shape.Block{Cols: cols}
	ends, amounts := b.Has(name.FieldFrom, name.FieldFromPin, name.FieldRun), tail.BeginsWithAmount(cols, rows[i])
	if !ends && !amounts && !b.Has(name.FieldPin) {
		return 0
	}
	for n = 0; i+n < len(rows) && (n == 0 || rows[i+n].Line == rows[i+n-1].Line+1) && !shape.IsText(rows[i+n]); n++ {
		r := rows[i+n]
		if f.isHead(i+n) || !tail.IsChange(cols, c.Rows, r, title) && (wide || !tail.Is(cols, c.Rows, r, title, ends || amounts)) {
			return 0
		}
	}
	return n
}

// take takes the rows of such a table, and its title, out of the list in hand.
func (f asides) take(i, n int) {
	if c := f.current; shape.IsText(f.t.Rows[i-1]) && c.Rows[len(c.Rows)-1].Line == f.t.Rows[i-1].Line {
		c.Rows = c.Rows[:len(c.Rows)-1]
		f.aside = append(f.aside, f.t.Rows[i-1])
	}
	f.aside = append(f.aside, f.t.Rows[i:i+n]...)
}
