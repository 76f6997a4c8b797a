package bench

// layout is where things go on a screen of a size: a pure function, so that its
// tests are small drawings.
type layout struct {
	w, h   int
	tiny   bool // too small for anything but one sentence
	list   int  // width of the list
	pic    int  // width of the section; 0: no room for it
	work   int  // height of list and section
	detail bool // a line that repeats the row in hand
	big    bool // three lines for the number being worked on
}

// The smallest screens: below tiny one sentence stands; below roomy there is no
// section.
const (
	tinyW, tinyH   = 34, 10
	roomyW, roomyH = 64, 16
	bigFrom        = 24 // large figures
)

// lay out: head and rail take two lines, then a blank where there is room, the
// work area, and five lines at the foot: row in hand, figures, snag, answer, keys.
func arrange(w, h int, wide bool) layout {
	l := layout{w: w, h: h, list: w}
	if w < tinyW || h < tinyH {
		l.tiny = true
		return l
	}
	l.detail = h >= 12
	foot := 4
	if l.detail {
		foot = 5
	}
	l.work = h - 2 - foot
	if h >= 20 {
		l.work -= 2 // a blank under the rail and one over the foot
	}
	if h >= bigFrom && !wide {
		l.big = true
		l.work -= bigH - 1 // the blank over the foot makes room for one line of it
	}
	if !wide && w >= roomyW && h >= roomyH {
		// The list is worth more than the section until it has what its columns need.
		l.pic = min(max(28, w-72, w*7/20), 72)
		if most := (l.work + map[bool]int{true: bigH}[l.big]) * 2; l.pic > most+6 {
			l.pic = most + 6
		}
		l.list = w - l.pic - 3
	}
	return l
}

// listWidth is the width rows are made for.
func (m *Model) listWidth() int { return arrange(m.w, m.height, len(m.stack) > 0 && m.wideTop()).list }

// wideTop reports whether the screen in front takes the whole width.
func (m *Model) wideTop() bool {
	switch m.top() {
	case "branches", "menu", "help", "quit", "compare", "unsaved work", "file changed", "why", "figures", "worst first", "sizes", "feeds", "feed", "split", "ends", "end", "splices", "splice", "lists", "threading", "run", "learned", "import", "told":
		return true
	}
	return false
}
