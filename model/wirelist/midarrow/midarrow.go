package midarrow

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/strokes"
	"contralay/model/wirelist/table"
)

// leastArrows is how many rows with an arrow stand together where that is no chance (no source).
const leastArrows = 3

// Rows are the rows of a sheet, those with a column of arrows between their ends in columns for these.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() || h.Recipe != nil {
		return t.Rows
	}
	rows := t.Rows
	for i := 0; i < len(rows); i++ {
		at := arrowIn(rows[i].Cells)
		if at < 0 {
			continue
		}
		first, last := i, i
		for first > 0 && isStrokeAt(rows[first-1], at) {
			first--
		}
		for last+1 < len(rows) && isStrokeAt(rows[last+1], at) {
			last++
		}
		if first > 0 && last-first+1 >= leastArrows {
			if made := tableOf(h, rows[first-1], rows[first:last+1], at); made != nil {
				rows = slices.Clone(rows)
				copy(rows[first-1:], made)
				i = last
				continue
			}
		}
		if last-first+1 >= leastLines && (first == 0 || isNoHead(h, rows[first-1], at)) {
			rows = slices.Clone(rows)
			for k := first; k <= last; k++ {
				rows[k].Cells, rows[k].Raw = []string{lineOf(rows[k].Cells, at)}, ""
			}
		}
		i = last
	}
	return rows
}

// arrowIn is the column of a row whose cell is an arrow with a head and nothing else, between two others; −1 where none is.
func arrowIn(cells []string) int {
	for k := 1; k+1 < len(cells); k++ {
		if isStroke(cells[k]) && strings.ContainsAny(cells[k], heads) {
			return k
		}
	}
	return -1
}

// heads are the heads of arrows, shafts what they are drawn of.
const (
	heads  = "<>→←↔⇒⇐⇔►◄▶◀"
	shafts = "-=─━—–_~ "
)

// isStroke reports whether a cell is an arrow or a stroke and nothing else.
func isStroke(cell string) bool {
	const longest = 24 // bytes (no source)
	return cell != "" && len(cell) <= longest && strings.Trim(cell, heads+shafts) == ""
}

func isStrokeAt(r table.Row, at int) bool { return at < len(r.Cells) && isStroke(r.Cells[at]) }

// tableOf is the headings and the rows below them in columns for both ends; nil where they can't be told.
func tableOf(h shape.Headings, head table.Row, rows []table.Row, at int) []table.Row {
	width := len(head.Cells)
	for _, r := range rows {
		width = max(width, len(r.Cells))
	}
	if width > mostColumns || at >= len(head.Cells) || isStroke(head.Cells[at]) && strings.ContainsAny(head.Cells[at], heads) {
		return nil
	}
	cols, _ := h.Columns([]table.Row{head}, width)
	s := sides{head: head, rows: rows, cols: cols}
	near, ok := s.side(at-1, -1)
	if !ok {
		return nil
	}
	far, ok := s.side(at+1, width)
	if !ok || near.part == far.part {
		return nil
	}
	var more []int // columns that are of no end
	for k := range width {
		if k != at && !near.has(k) && !far.has(k) && cellAt(head.Cells, k)+s.text(k) != "" {
			more = append(more, k)
		}
	}
	top := []string{"From", "From pin", "To", "To pin", "Signal", "Note", "Direction"}
	for _, k := range more {
		top = append(top, cellAt(head.Cells, k))
	}
	made := []table.Row{head}
	made[0].Cells, made[0].Made = top, true
	for _, r := range rows {
		made = append(made, s.row(r, near, far, at, more))
	}
	return made
}

// mostColumns is how wide such a table is at the most (no source).
const mostColumns = 12

// row is a row in the columns for both ends. A pin that a stroke without a head leads to nothing from is an empty one.
func (s sides) row(r table.Row, near, far side, at int, more []int) table.Row {
	from, to := near.end(r.Cells), far.end(r.Cells)
	signal, colour, note := strokes.Said([]string{from.name, to.name}, nil)
	if colour != "" {
		note = strings.TrimPrefix(note+", "+colour, ", ")
	}
	arrow := ""
	if strings.ContainsAny(r.Cells[at], heads) {
		arrow = r.Cells[at]
	}
	cells := []string{near.part, from.pin, far.part, to.pin, signal, note, arrow}
	if to.pin == "" && arrow == "" {
		cells = []string{near.part, from.pin, "", "", "", "", ""}
	}
	if from.pin == "" && arrow == "" {
		cells = []string{far.part, to.pin, "", "", "", "", ""}
	}
	for _, k := range more {
		cells = append(cells, cellAt(r.Cells, k))
	}
	r.Cells = cells
	return r
}

// isOfEnd reports whether a column can be one of an end, by what its heading means.
func isOfEnd(c shape.Column) bool {
	switch c.Field {
	case name.FieldColour, name.FieldGauge, name.FieldLength, name.FieldWire, name.FieldNumber:
		return false
	}
	return true
}
