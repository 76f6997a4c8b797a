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
func Arrange(w, h int, wide bool) Layout {
	want := kit.Want{Wide: wide, Foot: footRoomy}
	if h <= lowUpTo {
		want.Foot = footLow
	}
	l := Layout{Layout: kit.Arrange(min(w, widest), h, want), Tiny: w < TinyW || h < TinyH}
	l.List = l.Left
	if l.Sides {
		l.List.W-- // the last column does not touch the border
	}
	if l.Big = h >= bigFrom && !wide; l.Big {
		l.List.H -= words.BigH
	}
	return l
}

// ListWidth is the width rows are made for.
func (m *Model) ListWidth() int { return Arrange(m.W, m.Height, m.Here().Wide).List.W }

// ListHeight is how many lines the list has.
func (m *Model) ListHeight() int { return Arrange(m.W, m.Height, m.Here().Wide).List.H }
