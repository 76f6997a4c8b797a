package cablelines

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// parted gives the kind of each cable a column of its own, where its line has one cell with its name and its kind in it. ok is false
// where a line of a cable has no kind, or more than its cell.
//
//	Cable         | Core | From | To
//	W1 LiYY 4x0.5 |      |      |
//	              | wh   | X1:1 | M1:U
//	              | bn   | X1:2 | M1:V
func parted(s schedule, head table.Row, rows []table.Row) (newHead table.Row, out []table.Row, ok bool) {
	wide := len(head.Cells)
	for _, r := range rows {
		wide = max(wide, len(r.Cells))
	}
	newHead, out = head, slices.Clone(rows)
	newHead.Cells = append(widened(head.Cells, wide), KindHead)
	n, cores := 0, 0
	for i, r := range rows {
		text := cell(r, s.cable)
		switch filled, _ := r.Filled(); {
		case text == "" && filled > 1:
			cores++
		case filled == 0 || text == "" && shape.IsText(r):
		case filled != 1:
			return head, rows, false
		default:
			called, kind, two := strings.Cut(text, " ")
			if !two || !name.IsDesignator(called) || !s.isKind(kind) {
				return head, rows, false
			}
			n++
			out[i].Prose = false
			out[i].Cells = append(make([]string, wide), strings.TrimSpace(kind))
			out[i].Cells[s.cable] = called
		}
	}
	return newHead, out, n > 0 && cores > 0
}

// isKind reports whether a text is the kind of a cable: how many cores of which size it has.
func (s schedule) isKind(text string) bool {
	g, _ := value.ParseGauge(text, value.BareAWG, s.mark)
	return value.CoreSize(text, s.mark) != "" || g.IsCable()
}

// widened are cells up to a number of them.
func widened(cells []string, wide int) []string {
	out := make([]string, wide)
	copy(out, cells)
	return out
}
