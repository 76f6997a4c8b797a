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

// Resize says how wide a line may be, and that what stands there is to be drawn anew.
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
	var b strings.Builder
	if !s.entered {
		s.entered = true
		b.WriteString(enter)
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
		line = s.safe(line)
		b.WriteString("\x1b[" + strconv.Itoa(k+1) + ";1H" + line)
		// Lines are written by themselves and in any order, so none may leave its colour
		// to the next; and what is erased takes the ground that is set.
		if strings.IndexByte(line, '\x1b') >= 0 && !strings.HasSuffix(line, reset) {
			b.WriteString(reset)
		}
		// After a full line the cursor waits at its last cell, which erasing would
		// take away.
		if ansi.StringWidth(line) < s.width {
			b.WriteString(erase)
		}
	}
	s.shown = frame
	if b.Len() > 0 {
		s.write(b.String())
		s.last = time.Now()
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
