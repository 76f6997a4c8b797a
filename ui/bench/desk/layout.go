package desk

import (
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
)

// Layout is where things go on a screen of a size: that of the kit, and how the room in the
// left pane is shared.
type Layout struct {
	kit.Layout
	Tiny bool // too small for anything but one sentence
	List kit.Size
	Big  bool // three lines for the number being worked on
}

// The smallest screens: below tiny one sentence stands.
const (
	TinyW, TinyH = 34, 10
	bigFrom      = 22  // height from which there are large figures
	footRoomy    = 5   // row in hand, figures, open point, answer, keys
	footLow      = 4   // the answer takes the place of the open point
	lowUpTo      = 16  // height up to which the foot is low
	widest       = 400 // columns a terminal may have; the rest stays empty
)

// Arrange lays out a screen: a pure function, so that its tests are small drawings.
func Arrange(w, h int, wide bool) Layout { return arrange(w, h, kit.Want{Wide: wide}) }

// Arranged lays out the screen in front.
func (m *Model) Arranged() Layout {
	here := m.Here()
	return arrange(m.W, m.Height, kit.Want{Wide: here.Wide, Picture: here.Picture != nil})
}

func arrange(w, h int, want kit.Want) Layout {
	want.Foot = footRoomy
	if h <= lowUpTo {
		want.Foot = footLow
	}
	l := Layout{Layout: kit.Arrange(min(w, widest), h, want), Tiny: w < TinyW || h < TinyH}
	l.List = l.Left
	if l.Sides {
		l.List.W-- // the last column does not touch the border
	}
	if l.Big = h >= bigFrom && !want.Wide && !want.Picture; l.Big {
		l.List.H -= words.BigH
	}
	return l
}

// ListWidth is the width rows are made for.
func (m *Model) ListWidth() int { return m.Arranged().List.W }

// ListHeight is how many lines the list has.
func (m *Model) ListHeight() int { return m.Arranged().List.H }
