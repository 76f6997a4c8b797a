package kit

import (
	"fmt"

	"github.com/charmbracelet/bubbles/viewport"

	"contralay/ui/draw"
)

// Scroll is a text that is read and not chosen from: help, a report, a why. It moves
// by the library's viewport. The lines are cut and marked here: the viewport's own View
// wraps and fills them all again (0.5 ms a page of 120×40, this 0.02).
type Scroll struct {
	view  viewport.Model
	lines []string
}

// SetLines gives the text. The place is kept as far as the text goes.
func (s *Scroll) SetLines(lines []string) {
	s.lines = lines
	s.hold()
}

// SetSize gives the room.
func (s *Scroll) SetSize(w, h int) {
	s.view.Width, s.view.Height = max(w, 0), max(h, 0)
	s.hold()
}

// hold keeps the place inside the text.
func (s *Scroll) hold() {
	s.view.YOffset = min(max(s.view.YOffset, 0), s.last())
}

// last is the place from which the end is seen.
func (s *Scroll) last() int { return max(len(s.lines)-s.view.Height, 0) }

// At is the first line that shows.
func (s *Scroll) At() int { return s.view.YOffset }

// Press moves by one key and says whether it is a key that moves. At an end nothing
// happens, and says tells it.
func (s *Scroll) Press(name string) (moves bool, says string) {
	page := max(s.view.Height-2, 1) // two lines stay, so that the eye finds its place
	by := 0
	switch name {
	case "up":
		by = -1
	case "down":
		by = 1
	case "pgup":
		by = -page
	case "pgdown", "space":
		by = page
	case "home":
		by = -len(s.lines)
	case "end":
		by = len(s.lines)
	default:
		return false, ""
	}
	was := s.view.YOffset
	s.view.YOffset = min(max(was+by, 0), s.last())
	switch {
	case s.view.YOffset != was:
		return true, ""
	case by < 0:
		return true, "this is the beginning"
	}
	return true, "this is the end"
}

// Scroll draws the part of a text that shows, exactly h lines of w cells. Where there
// is more, the first or last line says how much.
func (t *Theme) Scroll(s *Scroll) []string {
	w, h := s.view.Width, s.view.Height
	out := make([]string, h)
	for k := range out {
		line := ""
		if n := s.view.YOffset + k; n < len(s.lines) {
			line = s.lines[n]
		}
		out[k] = t.Fit(line, w)
	}
	if h < 3 {
		return out
	}
	more := func(sign string, n int) string {
		unit := "lines"
		if n == 1 {
			unit = "line"
		}
		return t.Paint(Quiet, t.Fit(fmt.Sprintf("%s %d more %s", sign, n, unit), w))
	}
	// The mark stands in the place of a line, which it counts; one line alone is shown
	// rather than counted, so a mark never says 1.
	if above := s.view.YOffset; above > 0 {
		out[0] = more(t.Signs.Above, above+1)
	}
	if below := len(s.lines) - s.view.YOffset - h; below > 0 {
		out[h-1] = more(t.Signs.Below, below+1)
	}
	return out
}

// WrapAll wraps lines for a scroll, so that nothing of a text is cut.
func WrapAll(lines []string, w int) []string {
	var out []string
	for _, line := range lines {
		if draw.Width(line) <= w {
			out = append(out, line)
			continue
		}
		out = append(out, Wrap(line, w)...)
	}
	return out
}
