package screen

import (
	"io"
	"strconv"
	"strings"
	"sync"
	"time"

	"github.com/charmbracelet/x/ansi"

	"contralay/ui/draw"
)

// Sequences of ECMA-48 and of xterm's private modes (ctlseqs): the alternate screen,
// the cursor, and pastes in brackets.
const (
	enter = "\x1b[?1049h\x1b[2J\x1b[H\x1b[?25l\x1b[?2004h"
	leave = "\x1b[?2004l\x1b[?25h\x1b[?1049l"
	clear = "\x1b[2J"
	erase = "\x1b[K"  // from the cursor to the end of the line
	reset = "\x1b[0m" // ends every colour and weight
)

// Apart is how long two frames stand apart at least: 120 a second.
const Apart = time.Second / 120

// Screen is a terminal's alternate screen. It may be used from several goroutines.
type Screen struct {
	mu      sync.Mutex
	out     io.Writer
	width   int
	shown   []string // lines as they stand on the terminal
	next    []string // a frame that waits, or nil
	timer   *time.Timer
	last    time.Time
	entered bool
	left    bool
}

// New is a screen on a terminal; nothing is written before the first frame.
func New(out io.Writer, width int) *Screen { return &Screen{out: out, width: width} }

// Resize says how wide a line may be, and that what is on the terminal is to be drawn again.
func (s *Screen) Resize(width int) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.width, s.shown = width, nil
	if s.entered && !s.left {
		s.write(clear)
	}
}

// Show makes a frame, lines parted by line feeds, what stands on the terminal.
func (s *Screen) Show(frame string) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.left {
		return
	}
	s.next = strings.Split(frame, "\n")
	wait := Apart - time.Since(s.last)
	switch {
	case wait <= 0:
		s.draw()
	case s.timer == nil:
		s.timer = time.AfterFunc(wait, s.late)
	}
}

// late draws the frame that waited.
func (s *Screen) late() {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.timer = nil
	if !s.left && s.next != nil {
		s.draw()
	}
}

// draw writes what differs between the frame that waits and what stands there.
func (s *Screen) draw() {
	frame := s.next
	s.next = nil
	var p pen
	if !s.entered {
		s.entered = true
		p.out = append(p.out, enter...)
	}
	for k := range max(len(frame), len(s.shown)) {
		line, was, there := "", "", k < len(s.shown)
		if k < len(frame) {
			line = frame[k]
		}
		if there {
			was = s.shown[k]
		}
		if there && line == was || !there && line == "" {
			continue
		}
		s.change(&p, k, s.safe(was), s.safe(line))
	}
	p.to(look{})
	s.shown = frame
	if len(p.out) > 0 {
		s.write(string(p.out))
		s.last = time.Now()
	}
}

// change writes what differs in one line. Where every character takes one cell the runs of cells
// that changed are written; a line that holds others, on whose width terminals disagree, is
// written whole.
func (s *Screen) change(p *pen, row int, was, line string) {
	before, ok := cells(was)
	after, too := cells(line)
	if ok && too && len(before) <= s.width && len(after) <= s.width {
		p.line(row, before, after)
		return
	}
	p.to(look{})
	p.out = append(p.out, "\x1b["+strconv.Itoa(row+1)+";1H"...)
	p.out = append(p.out, line...)
	// The next line must not take on this one's colour; and what is erased takes the ground that
	// is set.
	if strings.IndexByte(line, '\x1b') >= 0 && !strings.HasSuffix(line, reset) {
		p.out = append(p.out, reset...)
	}
	// After a full line the cursor waits at its last cell, which erasing would take away.
	if ansi.StringWidth(line) < s.width {
		p.out = append(p.out, erase...)
	}
}

// safe is the last gate before the terminal: text and colours pass, whatever else a terminal
// would obey is shown as a sign. A frame that is made right passes as it is.
func (s *Screen) safe(line string) string {
	shown := draw.Safe(line)
	if shown != line && ansi.StringWidth(shown) > s.width {
		return draw.Cut(shown, s.width, false)
	}
	return shown
}

// write never fails the program: a terminal that is gone has its own signal.
func (s *Screen) write(text string) { _, _ = io.WriteString(s.out, text) }

// Leave gives the terminal back as it was. Whatever is shown after it is not written.
func (s *Screen) Leave() {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.left {
		return
	}
	s.left = true
	if s.timer != nil {
		s.timer.Stop()
	}
	if s.entered {
		s.write(leave)
	}
}
