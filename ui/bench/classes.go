package bench

import (
	"strings"

	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/cross"
	"contralay/ui/draw"
)

// section is how the section is drawn, and what was drawn last.
type section struct {
	zoom bool // the part round the row in hand
	by   cross.By
	kept []drawing // the last is the newest

	drawn int // how many were drawn, for tests
}

func sectionOf(m *desk.Model) *section { return desk.State[section](m) }

// wholeSection draws the whole section again: another branch is taken in hand.
func wholeSection(m *desk.Model) { sectionOf(m).zoom = false }

// look goes on to the next way of drawing the section: by what its colours tell apart, by
// destination first, then a closer look at what is round the row in hand.
func look(m *desk.Model) {
	s := sectionOf(m)
	switch {
	case s.zoom:
		s.zoom, s.by = false, cross.ByColour
	case s.by+1 == cross.End:
		s.zoom, s.by = true, cross.ByColour
	default:
		s.by++
	}
	if s.zoom {
		m.Tell("section: closer round the row you are on")
		return
	}
	m.Tell("section: whole, by " + byText(m))
}

// byText is what the section tells apart. Without colour it cannot tell the insulation, and the
// pieces are told by their numbers.
func byText(m *desk.Model) string {
	if by := sectionOf(m).by; by != cross.ByColour || m.Cfg.Palette.Colour {
		return by.String()
	}
	return "number"
}

// drawing is a section that was drawn, with everything it hangs on.
type drawing struct {
	of    drawingOf
	lines []string
}

// drawingOf is what a drawing hangs on.
type drawingOf struct {
	sheet       *sheet.Sheet
	branch      int
	mark        string
	layer       int // in hand; none is -1
	zoom, ascii bool
	by          cross.By
	w, h        int
	sys         unit.System
	palette     draw.Palette
}

// mostKept is how many drawings are kept: a list is gone through and back again.
const mostKept = 12

// find is a drawing that was made before.
func (s *section) find(of drawingOf) ([]string, bool) {
	for k := len(s.kept) - 1; k >= 0; k-- {
		if s.kept[k].of == of {
			return s.kept[k].lines, true
		}
	}
	return nil, false
}

// keep keeps a drawing and lets the oldest go.
func (s *section) keep(of drawingOf, lines []string) {
	if len(s.kept) == mostKept {
		s.kept = append(s.kept[:0], s.kept[1:]...)
	}
	s.kept = append(s.kept, drawing{of: of, lines: lines})
	s.drawn++
}

// legendLines is how many lines a key may take.
const legendLines = 2

// legend is the key of the classes, in lines of exactly w cells; none where nothing needs one.
func legend(m *desk.Model, names []string, w int) []string {
	if len(names) == 0 {
		return nil
	}
	colour, by := m.Cfg.Palette.Colour, sectionOf(m).by
	var out []string
	plain, line := "", ""
	end := func() {
		left := (w - draw.Width(plain)) / 2
		out = append(out, strings.Repeat(" ", left)+line+strings.Repeat(" ", w-left-draw.Width(plain)))
		plain, line = "", ""
	}
	for k, n := range names {
		word := m.Theme.Plain(" " + n + " ")
		if !colour {
			word = m.Theme.Plain(by.Mark(k) + " " + n)
		}
		word = draw.Cut(word, w, m.Cfg.ASCII)
		sep := "  "
		if plain != "" && draw.Width(plain+sep+word) > w {
			if end(); len(out) == legendLines {
				return out
			}
		}
		if plain == "" {
			sep = ""
		}
		plain += sep + word
		if colour {
			word = m.Cfg.Palette.Paint(draw.ClassStyle(k), word)
		}
		line += sep + word
	}
	if end(); len(out) > legendLines {
		return out[:legendLines]
	}
	return out
}
