package desk

import (
	"contralay/ui/bench/words"
)

// Layout is where things go on a screen of a size: a pure function, so that its
// tests are small drawings.
type Layout struct {
	W, h   int
	Tiny   bool // too small for anything but one sentence
	List   int  // width of the list
	Pic    int  // width of the section; 0: no room for it
	Work   int  // height of list and section
	Detail bool // a line that repeats the row in hand
	Big    bool // three lines for the number being worked on
}

// The smallest screens: below tiny one sentence stands; below roomy there is no
// section.
const (
	TinyW, TinyH   = 34, 10
	RoomyW, RoomyH = 64, 16
	bigFrom        = 24 // large figures
)

// lay out: head and rail take two lines, then a blank where there is room, the
// work area, and five lines at the foot: row in hand, figures, snag, answer, keys.
func Arrange(w, h int, wide bool) Layout {
	l := Layout{W: w, h: h, List: w}
	if w < TinyW || h < TinyH {
		l.Tiny = true
		return l
	}
	l.Detail = h >= 12
	foot := 4
	if l.Detail {
		foot = 5
	}
	l.Work = h - 2 - foot
	if h >= 20 {
		l.Work -= 2 // a blank under the rail and one over the foot
	}
	if h >= bigFrom && !wide {
		l.Big = true
		l.Work -= words.BigH - 1 // the blank over the foot makes room for one line of it
	}
	if !wide && w >= RoomyW && h >= RoomyH {
		// The list is worth more than the section until it has what its columns need.
		l.Pic = min(max(28, w-72, w*7/20), 72)
		tall := l.Work
		if l.Big {
			tall += words.BigH
		}
		if most := tall * 2; l.Pic > most+6 {
			l.Pic = most + 6
		}
		l.List = w - l.Pic - 3
	}
	return l
}

// ListWidth is the width rows are made for.
func (m *Model) ListWidth() int { return Arrange(m.W, m.Height, m.Here().Wide).List }
