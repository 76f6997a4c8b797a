package bench

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/sheet"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/draw"
	"contralay/ui/paper"
)

// discs turns a branch into discs to draw. mark is the component in hand.
func discs(m *desk.Model, mark string) draw.Section {
	_, b, ok := m.BranchHere()
	if !ok {
		return draw.Section{}
	}
	s := draw.Section{OverMM: b.OverMM, TapeMM: b.TapeMM}
	if b.Sheath.Tube.Set && b.Sheath.Verdict.Wraps {
		s.SheathMM = b.Sheath.Verdict.OverMM
	}
	class, _ := classes(m, b)
	letters := sectionOf(m).by != bySize && !m.Cfg.Palette.Colour
	filler := 0
	for k, l := range b.Layers {
		at := slices.IndexFunc(l.Members, func(c sheet.Member) bool { return c.ID == mark })
		for j, c := range l.Members {
			d := draw.Disc{ID: c.ID, Label: c.ID, X: c.X, Y: c.Y, D: c.D, Layer: k, Kind: paper.KindOf(c.Kind),
				Class: class(c), Selected: c.ID == mark && mark != "", Tracer: c.ID == l.Tracer && k > 0}
			if letters {
				d.Label = classMark(m, d.Class)
			}
			if c.Kind == sheet.OfFiller {
				filler++
				d.ID, d.Label = "filler "+strconv.Itoa(filler), "o"
			}
			if n := len(l.Members); at >= 0 && k > 0 && n > 2 && j != at {
				d.Neighbour = (at+1)%n == j || (at+n-1)%n == j
			}
			s.Discs = append(s.Discs, d)
		}
	}
	return s
}

// sectionTitle says which end the section is seen from, and what its colours tell apart.
func sectionTitle(m *desk.Model) string {
	mb, _, ok := m.BranchHere()
	if !ok {
		return ""
	}
	by := "by " + sectionOf(m).by.String()
	if sectionOf(m).zoom {
		by = "closer"
	}
	return "Seen from " + mb.From + ", " + by
}

// keyFrom is the height from which the section has room for a key under it.
const keyFrom = 10

// picture is the section as styled lines of exactly w cells; under it which end it is
// seen from and how many labels had no room, then the key of its classes.
func picture(m *desk.Model, mark string, w, h int) []string {
	_, b, ok := m.BranchHere()
	if !ok {
		return blank(w, h)
	}
	if len(b.Layers) == 0 {
		says := "nothing to draw yet"
		if b.Waiting {
			says = "working out a lay-up"
		}
		out := blank(w, h)
		if h > 2 {
			out[h/2] = draw.Fit(says, w, m.Cfg.ASCII)
		}
		return out
	}
	s := discs(m, mark)
	if sectionOf(m).zoom && mark != "" {
		s = draw.Zoomed(s, mark)
	}
	mode := draw.ASCII
	if !m.Cfg.ASCII && m.Cfg.Palette.Colour {
		mode = draw.Blocks
	}
	_, names := classes(m, b)
	key := legend(m, names, w)
	if h < keyFrom {
		key = nil
	} else if says := woundText(m, &b.Layers[0], w); says != "" {
		key = append([]string{m.Theme.Paint(kit.Quiet, draw.Centre(says, w))}, key...)
	}
	c := draw.Picture(s, w, h-len(key), mode, m.Cfg.Palette)
	out := c.Styled(m.Cfg.Palette)
	if n := len(c.NotShown); n > 0 && len(out) > 1 {
		if says := fmt.Sprintf("+ %d without a label: * closer", n); draw.Width(says) <= w {
			out[len(out)-1] = m.Theme.Paint(kit.Quiet, draw.Centre(says, w))
		}
	}
	return append(out, key...)
}

// woundText is a centre that is built up, in as many words as there is room for; the picture
// shows only the space that the tape fills.
func woundText(m *desk.Model, l *sheet.Layer, w int) string {
	says := l.BuiltUp(m.Sys)
	if draw.Width(says) > w {
		says, _, _ = strings.Cut(says, " with ")
	}
	if draw.Width(says) > w {
		return ""
	}
	return says
}

func blank(w, h int) []string {
	out := make([]string, max(0, h))
	for i := range out {
		out[i] = draw.Pad("", w)
	}
	return out
}
