// Package cablelines finds the lines of a cable schedule that tell of a cable as a whole, above the lines of its cores.
package cablelines

import (
	"slices"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// KindHead is the heading of the column that is made for the kinds of the cables, where they stand in the place of the cores.
const KindHead = "Cable type"

// schedule is a table with a column that names the cables.
type schedule struct {
	mark   value.Mark
	cols   []shape.Column
	cable  int // the column that names them
	length int // and that of lengths and of notes, −1 where there is none
	note   int
}

// Spread writes what the line of a cable says into the lines of its cores: its name, its kind, its length and its note, where they say
// nothing there. The line itself becomes a text between the rows. ok is false where the table has no such lines.
//
//	Cable | Core           | From | To  | Length
//	W1    | 3 x 0.5 mm²    |      |     | 6 m
//	      | 1              | J1-1 | M-A |
//	      | 2              | J1-2 | M-B |
func Spread(h shape.Headings, head table.Row, rows []table.Row, mark value.Mark) (newHead table.Row, out []table.Row, ok bool) {
	s, ok := scheduleOf(h, head, mark)
	if !ok {
		return head, rows, false
	}
	was, all := head, rows
	if more, apart, ok := parted(s, head, rows); ok {
		if s, ok = scheduleOf(h, more, mark); ok {
			head, rows = more, apart
		}
	}
	kindIn, whole := s.lines(rows)
	if whole == nil {
		return was, all, false
	}
	newHead, out = head, slices.Clone(rows)
	made := kindIn < 0
	if made {
		kindIn = len(head.Cells)
		newHead.Cells = append(slices.Clone(head.Cells), KindHead)
	}
	var of *table.Row
	kind := ""
	for i := range out {
		switch {
		case whole[i]:
			of, kind = &rows[i], s.kind(rows[i])
			out[i].Prose, out[i].Taken = true, true
			out[i].Cells = []string{shape.RowText(rows[i].Cells)}
		case of == nil || shape.IsText(rows[i]) || s.empty(rows[i]):
		default:
			out[i].Cells = s.core(rows[i], *of, kind, kindIn, len(newHead.Cells))
		}
	}
	return newHead, out, true
}

// scheduleOf looks at the headings: a column names the cables, others say where the wires start and go, or in which cavity they are.
func scheduleOf(h shape.Headings, head table.Row, mark value.Mark) (s schedule, ok bool) {
	cols, _ := h.Columns([]table.Row{head}, 0)
	h.Sides(cols)
	at := func(f name.Field) int {
		return slices.IndexFunc(cols, func(c shape.Column) bool { return c.Field == f })
	}
	s = schedule{mark: mark, cols: cols, cable: at(name.FieldCable), length: at(name.FieldLength), note: at(name.FieldNote)}
	b := shape.Block{Cols: cols}
	return s, s.cable >= 0 && b.Has(name.FieldFrom, name.FieldFromPin, name.FieldPin, name.FieldRun)
}

// lines finds the rows that are of a cable as a whole; nil where a row that names a cable is none, or cores stand above the first.
// kindIn is the column of their kinds, −1 where cores have their numbers there.
func (s schedule) lines(rows []table.Row) (kindIn int, whole []bool) {
	whole = make([]bool, len(rows))
	kindIn = -1
	n, cores, own := 0, 0, false
	for i, r := range rows {
		switch {
		case shape.IsText(r) || s.empty(r):
		case s.cable < len(r.Cells) && r.Cells[s.cable] != "":
			col := s.kindColumn(r)
			if col < 0 || s.hasEnd(r) || n > 0 && (cores == 0 || col != kindIn) {
				return -1, nil
			}
			whole[i], kindIn, cores = true, col, 0
			n++
		case n == 0:
			return -1, nil
		default:
			cores++
			own = own || kindIn < len(r.Cells) && r.Cells[kindIn] != ""
		}
	}
	if n == 0 || cores == 0 {
		return -1, nil
	}
	if own {
		kindIn = -1
	}
	return kindIn, whole
}

// kindColumn is the column of a row in which the kind of a cable stands, with the number of its cores; −1 where none has it.
func (s schedule) kindColumn(r table.Row) int {
	for i, c := range r.Cells {
		if i == s.cable || i == s.note || c == "" || i >= len(s.cols) {
			continue
		}
		g, _ := value.ParseGauge(c, value.BareAWG, s.mark)
		if value.CoreSize(c, s.mark) != "" || cable.Words(c).IsCable() || g.IsCable() {
			return i
		}
	}
	return -1
}

// kind is the kind of the cable that a row tells of.
func (s schedule) kind(r table.Row) string {
	if i := s.kindColumn(r); i >= 0 {
		return r.Cells[i]
	}
	return ""
}

// hasEnd reports whether a row names an end or a cavity.
func (s schedule) hasEnd(r table.Row) bool {
	kind := s.kindColumn(r)
	for i, c := range s.cols {
		switch c.Field {
		case name.FieldFrom, name.FieldFromPin, name.FieldTo, name.FieldToPin, name.FieldRun, name.FieldPin:
			if i != kind && i < len(r.Cells) && !value.IsNothing(r.Cells[i]) {
				return true
			}
		}
	}
	return false
}

// empty reports whether a row has nothing in its cells.
func (s schedule) empty(r table.Row) bool {
	n, _ := r.Filled()
	return n == 0
}

// core is a row of a core with what the line of its cable says. The drain of a shield has not the size of the cores.
func (s schedule) core(r, of table.Row, kind string, kindIn, wide int) []string {
	cells := slices.Clone(r.Cells)
	for len(cells) < wide {
		cells = append(cells, "")
	}
	cells[s.cable] = of.Cells[s.cable]
	for _, i := range []int{s.length, s.note} {
		if i >= 0 && i < len(of.Cells) && cells[i] == "" {
			cells[i] = of.Cells[i]
		}
	}
	if !slices.ContainsFunc(r.Cells, func(c string) bool { return name.IsDrainWord(table.Fold(c)) }) {
		cells[kindIn] = kind
	}
	return cells
}
