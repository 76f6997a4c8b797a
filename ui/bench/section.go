package bench

import (
	"fmt"
	"strings"

	"contralay/calc/sheet"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/cross"
	"contralay/ui/draw"
	"contralay/ui/draw/shape"
)

// inHandOf is what of the section is in hand: a piece, or a whole layer.
type inHandOf struct {
	piece string
	layer int // none is -1
}

// sectionHand is what of the section a row has in hand.
func sectionHand(r *desk.Row) inHandOf {
	if r == nil {
		return inHandOf{layer: -1}
	}
	out := inHandOf{piece: r.Id, layer: -1}
	if r.Layer.Set {
		out.layer = r.Layer.V
	}
	return out
}

// discs turns a branch into what is drawn, and names what its colours tell apart.
func discs(m *desk.Model, hand inHandOf) (draw.Section, []string) {
	_, b, ok := m.BranchHere()
	if !ok {
		return draw.Section{}, nil
	}
	s := cross.Of(m.Sheet, m.Branch)
	names := cross.Paint(m.Sheet, m.Branch, &s, sectionOf(m).by, m.Sys)
	if mapped(m) { // every piece has its label, and a layer is shown by its first piece
		cross.TakePiece(m.Sheet, m.Branch, &s, hand.piece)
		s.Says = ""
		if len(names) > 0 && !m.Cfg.Palette.Colour {
			for i := range s.Discs {
				if s.Discs[i].Kind != draw.Filler {
					s.Discs[i].Label = sectionOf(m).by.Mark(s.Discs[i].Class)
				}
			}
		}
		return s, names
	}
	if hand.layer >= 0 && hand.layer < len(b.Layers) {
		cross.TakeLayer(m.Sheet, m.Branch, &s, hand.layer)
	} else {
		cross.TakePiece(m.Sheet, m.Branch, &s, hand.piece)
	}
	return s, names
}

// mapped reports whether the section is a map of labels: in plain characters, and where classes
// must be told apart without colour.
func mapped(m *desk.Model) bool {
	return m.Cfg.ASCII || !m.Cfg.Palette.Colour && sectionOf(m).by != cross.ByColour
}

// sectionTitle says which end the section is seen from, and what its colours tell apart.
func sectionTitle(m *desk.Model) string {
	mb, _, ok := m.BranchHere()
	if !ok {
		return ""
	}
	by := "by " + byText(m)
	if sectionOf(m).zoom {
		by = "closer"
	}
	return "From " + mb.From + ", " + by
}

// keyFrom is the height from which the section has room for a key under it.
const keyFrom = 10

// picture is the section as styled lines of exactly w cells; under it the layer in hand and what
// is to be said of its numbers, then the key of its classes. It is drawn once and kept.
func picture(m *desk.Model, hand inHandOf, w, h int) []string {
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
	s := sectionOf(m)
	of := drawingOf{sheet: m.Sheet, branch: m.Branch, mark: hand.piece, layer: hand.layer, zoom: s.zoom, ascii: m.Cfg.ASCII, by: s.by,
		w: w, h: h, sys: m.Sys, palette: m.Cfg.Palette}
	if lines, ok := s.find(of); ok {
		return lines
	}
	lines := drawn(m, hand, w, h)
	s.keep(of, lines)
	return lines
}

// drawn draws the section of a branch that is laid.
func drawn(m *desk.Model, hand inHandOf, w, h int) []string {
	_, b, _ := m.BranchHere()
	s, names := discs(m, hand)
	if sectionOf(m).zoom && hand.piece != "" {
		s = draw.Zoomed(s, hand.piece)
		for i := range s.Discs { // there is room for every number
			s.Discs[i].Dim = false
		}
	}
	key := legend(m, names, w)
	if h < keyFrom {
		key = nil
	} else if says := woundText(m, &b.Layers[0], w); says != "" {
		key = append([]string{m.Theme.Paint(kit.Quiet, draw.Centre(says, w))}, key...)
	}
	if !mapped(m) {
		c := shape.Picture(s, w, h-len(key), m.Cfg.Palette)
		return append(c.Styled(m.Cfg.Palette), key...)
	}
	c := draw.Picture(s, w, h-len(key), m.Cfg.Palette)
	out := c.Styled(m.Cfg.Palette)
	if n := len(c.NotShown); n > 0 && len(out) > 1 {
		if says := fmt.Sprintf("+ %d without a label: * closer", n); draw.Width(says) <= w {
			out[len(out)-1] = m.Theme.Paint(kit.Quiet, draw.Centre(says, w))
		}
	}
	return append(out, key...)
}

// woundText is a centre that is built up, in as many words as there is room for.
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
