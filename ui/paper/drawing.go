package paper

import (
	"html/template"
	"strings"

	"contralay/model/unit"
	"contralay/model/visible"
	"contralay/ui/paper/board"
	"contralay/ui/paper/svg"
)

// The room that the drawing has on a page, mm: the width of A4 and of Letter within their margins, and
// what both leave in height below a heading and above a few notes.
const (
	drawingWide unit.Millimetre = 180
	drawingHigh unit.Millimetre = 225
)

// drawing is the harness to scale, as SVG, and what has to be known about it; "" where there is none.
func (m maker) drawing() (template.HTML, []string) {
	page, notes := board.Page(m.S, drawingWide, drawingHigh, m.Sys)
	if page == nil {
		return "", nil
	}
	var says []string
	for _, n := range notes {
		says = append(says, visible.Line(m.Sys.Says(n.Says))+".")
	}
	var b strings.Builder
	svg.Write(&b, page, "drawing")
	return template.HTML(b.String()), says // #nosec: it escapes what it writes
}
