package bench

import (
	"strings"

	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/draw"
)

// What was not written to disk is said with its reason, whole: a name too long and a full disk
// ask for different hands.

// lostPrefixes begin the messages about what was not written.
var lostPrefixes = []string{"not saved: ", "not printed: "}

// lost is the first words of what is said of something that was not written; "" where nothing
// of the kind is said.
func lost(m *desk.Model) string {
	for _, begins := range lostPrefixes {
		if m.Trouble && strings.HasPrefix(m.Says, begins) {
			return begins
		}
	}
	return ""
}

// withRoomForLoss is a layout with a line more for such a message, where the screen is so low
// that the open point and one line would be all there is.
func withRoomForLoss(m *desk.Model, l desk.Layout) desk.Layout {
	const least = 4 // an open point or a field, two lines, the keys
	if lost(m) != "" && !l.Tiny && l.Foot < least && l.List.H > 2 {
		l.Foot, l.List.H, l.Left.H, l.Right.H = l.Foot+1, l.List.H-1, l.Left.H-1, max(0, l.Right.H-1)
	}
	return l
}

// lostLines is such a message in up to so many lines; nil for any other. What stands between
// its first words and the reason at its end is shortened where there is no room.
func lostLines(m *desk.Model, w, most int) []string {
	begins := lost(m)
	if begins == "" {
		return nil
	}
	var out []string
	for _, line := range wholeReason(m.Theme.Text("? "+m.Says), m.Theme.Text("? "+begins), w, most, m.Cfg.ASCII) {
		out = append(out, m.Theme.Paint(kit.Warn, line))
	}
	return out
}

// wholeReason wraps a text that begins with some words and ends with a reason behind its last
// colon: into so many lines at most, the middle shortened as far as it must be.
func wholeReason(text, begins string, w, most int, ascii bool) []string {
	lines := kit.Wrap(text, w)
	if len(lines) <= most {
		return lines
	}
	dots := "…"
	if ascii {
		dots = "~"
	}
	at := max(strings.LastIndex(text, ": "), len(begins)-len(": "))
	middle, reason := []rune(text[len(begins):max(at, len(begins))]), text[at:]
	for n := len(middle) - 1; n >= 0; n-- {
		short := begins + string(middle[:n]) + dots + reason
		if n == 0 {
			short = strings.TrimSuffix(begins, ": ") + reason
		}
		if lines = kit.Wrap(short, w); len(lines) <= most {
			return lines
		}
	}
	lines = lines[:most]
	lines[most-1] = draw.Cut(lines[most-1]+dots, w, ascii) // not even the reason alone fits
	return lines
}
