package main

import (
	"bytes"
	"errors"
	"io"
	"os"
	"os/exec"
	"regexp"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/charmbracelet/x/vt"
	"github.com/creack/pty"
)

// Keys as a terminal sends them.
const (
	up, down, right, left = "\x1b[A", "\x1b[B", "\x1b[C", "\x1b[D"
	enter, backspace, esc = "\r", "\x7f", "\x1b"
	ctrlC                 = "\x03"
)

// patience is how long a screen may take to come; far more than it needs, since a
// test that waits for a screen is about the screen and not about its speed.
const patience = 30 * time.Second

// terminal is the program on a pseudo-terminal whose screen can be read. It is
// mute: it never answers what the program may ask it.
type terminal struct {
	t   testing.TB
	cmd *exec.Cmd
	pty *os.File
	dir string // where it runs: what it writes unasked would lie here

	mu     sync.Mutex
	screen *vt.Emulator
	raw    bytes.Buffer // everything the program sent
	last   time.Time    // when it sent last

	drawn chan struct{} // something was drawn
	gone  chan struct{} // the program has ended
}

// start opens the program on a terminal of a size. env is added to environ.
func start(t testing.TB, cols, rows int, env []string, args ...string) *terminal {
	t.Helper()
	cmd := exec.Command(built, args...)
	cmd.Env = environ(t, env...)
	return startCommand(t, cols, rows, cmd)
}

// startCommand opens any program on a terminal of a size.
func startCommand(t testing.TB, cols, rows int, cmd *exec.Cmd) *terminal {
	t.Helper()
	cmd.Dir = t.TempDir()
	opened, err := pty.StartWithSize(cmd, &pty.Winsize{Cols: uint16(cols), Rows: uint16(rows)})
	if err != nil {
		t.Skipf("no pseudo-terminal can be opened here: %v", err)
	}
	f, err := unblocked(opened)
	if err != nil {
		t.Fatal(err)
	}
	s := &terminal{t: t, cmd: cmd, pty: f, dir: cmd.Dir, screen: vt.NewEmulator(cols, rows), drawn: make(chan struct{}, 1),
		gone: make(chan struct{})}
	go func() { _, _ = io.Copy(io.Discard, s.screen) }() // answers go nowhere
	go s.listen()
	t.Cleanup(s.close)
	return s
}

func (s *terminal) listen() {
	buf := make([]byte, 1<<15)
	for {
		n, err := s.pty.Read(buf)
		if n > 0 {
			s.mu.Lock()
			s.raw.Write(buf[:n])
			_, _ = s.screen.Write(buf[:n])
			s.last = time.Now()
			s.mu.Unlock()
			select {
			case s.drawn <- struct{}{}:
			default:
			}
		}
		if err != nil {
			break
		}
	}
	_ = s.cmd.Wait()
	close(s.gone)
}

func (s *terminal) close() {
	_ = s.cmd.Process.Kill()
	_ = s.pty.Close()
	<-s.gone
	// The emulator is left open: its Close is not made to run beside its Read, and
	// the reader that takes its answers away ends with the process.
}

// text is the screen as lines without trailing blanks.
func (s *terminal) text() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	lines := strings.Split(s.screen.String(), "\n")
	for k := range lines {
		lines[k] = strings.TrimRight(lines[k], " \r")
	}
	return strings.Join(lines, "\n")
}

// sent is every byte the program sent.
func (s *terminal) sent() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.raw.String()
}

// press sends bytes in one write.
func (s *terminal) press(keys string) {
	s.t.Helper()
	if _, err := s.pty.Write([]byte(keys)); err != nil {
		s.t.Fatalf("keys %q: %v", keys, err)
	}
}

// quiet is how long nothing must come before a screen counts as drawn whole: a
// frame may arrive in several pieces.
const quiet = 25 * time.Millisecond

// restless is how long the program has yet to be quiet.
func (s *terminal) restless() time.Duration {
	s.mu.Lock()
	defer s.mu.Unlock()
	return quiet - time.Since(s.last)
}

// until waits for a screen, drawn whole.
func (s *terminal) until(what string, holds func(screen string) bool) string {
	s.t.Helper()
	return s.within(patience, what, holds)
}

// within is until with a patience of its own.
func (s *terminal) within(patience time.Duration, what string, holds func(screen string) bool) string {
	s.t.Helper()
	late := time.After(patience)
	for {
		rest := s.restless()
		if rest <= 0 {
			if text := s.text(); s.restless() <= 0 && holds(text) {
				return text
			}
			rest = 100 * time.Millisecond
		}
		select {
		case <-s.drawn:
		case <-time.After(rest):
		case <-s.gone:
			if text := s.text(); holds(text) {
				return text
			}
			s.t.Fatalf("the program ended before %s; it sent last:\n%s", what, tail(s.sent(), 2000))
		case <-late:
			s.t.Fatalf("%s did not come; the screen:\n%s", what, s.text())
		}
	}
}

func tail(text string, n int) string { return text[max(0, len(text)-n):] }

// see waits until a screen has all these words.
func (s *terminal) see(words ...string) string {
	s.t.Helper()
	return s.until("a screen with "+strings.Join(words, ", "), func(screen string) bool {
		for _, w := range words {
			if !strings.Contains(screen, w) {
				return false
			}
		}
		return true
	})
}

// laid waits until the lay-up that is worked out beside the screen has joined it:
// until then a screen may change without a key.
func (s *terminal) laid() {
	s.t.Helper()
	s.until("the lay-up", overLine.MatchString)
}

// changed presses keys and waits until the screen is another. What an earlier key changes late is a change, too: settle before it.
func (s *terminal) changed(keys string) string {
	s.t.Helper()
	before := s.text()
	s.press(keys)
	return s.until("a change", func(screen string) bool { return screen != before })
}

// hand is the row in hand, found by its sign: its line and its words, with the sign and what
// is wrong with it before them.
func hand(screen string) (line int, words string) {
	for k, t := range strings.Split(screen, "\n") {
		t = leftPane(t)
		cells := []rune(t)
		if k < 2 || len(cells) < 4 || cells[1] != '▸' && cells[1] != '>' {
			continue
		}
		return k, ">" + string(cells[0]) + " " + strings.TrimRight(string(cells[3:]), " ")
	}
	return -1, ""
}

// leftPane is what stands in the left pane on a line of the screen, without the borders.
func leftPane(line string) string {
	if left, _, two := strings.Cut(line, "╮╭"); two {
		return left // the title of the section says what its colours tell apart
	}
	for _, side := range []string{"│", "|"} {
		rest, framed := strings.CutPrefix(line, side)
		if !framed {
			continue
		}
		if left, _, two := strings.Cut(rest, side+side); two {
			return left // the section stands right of it
		}
		return strings.TrimSuffix(strings.TrimRight(rest, " "), side)
	}
	return line
}

// toRow goes down, then up, then down to a row that matches. The end of a list shows
// itself by a key that moves nothing.
func (s *terminal) toRow(match string) {
	s.t.Helper()
	re := regexp.MustCompile(match)
	for _, key := range []string{down, up, down} {
		for {
			before := s.text()
			at, words := hand(before)
			if re.MatchString(words) {
				// A frame with much of the section in it comes in pieces, and may hold an answer to
				// an earlier key.
				if s.settle(); s.onRow(re) {
					return
				}
				continue
			}
			s.press(key)
			pressed := time.Now()
			now := s.until("an answer", func(screen string) bool { // what is worked out beside it may change the screen, too
				k, w := hand(screen)
				return k != at || w != words || time.Since(pressed) > time.Second
			})
			if k, w := hand(now); k == at && w == words {
				if k, w := hand(s.settle()); k == at && w == words {
					break
				}
			}
		}
	}
	s.t.Fatalf("no row matches %q; the screen:\n%s", match, s.text())
}

// onRow reports whether the row in hand matches.
func (s *terminal) onRow(re *regexp.Regexp) bool {
	_, words := hand(s.text())
	return re.MatchString(words)
}

// settle waits until the screen stays as it is for a while, and returns it.
func (s *terminal) settle() string {
	for {
		before := s.text()
		time.Sleep(2 * quiet)
		if now := s.text(); now == before {
			return now
		}
	}
}

// resize makes the terminal another size; the program is told by its signal.
func (s *terminal) resize(cols, rows int) {
	s.t.Helper()
	s.mu.Lock()
	s.screen.Resize(cols, rows)
	s.mu.Unlock()
	if err := pty.Setsize(s.pty, &pty.Winsize{Cols: uint16(cols), Rows: uint16(rows)}); err != nil {
		s.t.Fatal(err)
	}
}

// signal sends the program a signal.
func (s *terminal) signal(g syscall.Signal) {
	s.t.Helper()
	if err := s.cmd.Process.Signal(g); err != nil {
		s.t.Fatal(err)
	}
}

// ends waits for the end of the program and returns its exit code.
func (s *terminal) ends() int {
	s.t.Helper()
	select {
	case <-s.gone:
	case <-time.After(patience):
		s.t.Fatalf("the program did not end; the screen:\n%s", s.text())
	}
	if text := s.sent(); strings.Contains(text, "goroutine ") {
		s.t.Errorf("the program ended in a stack trace:\n%s", tail(text, 3000))
	}
	return s.cmd.ProcessState.ExitCode()
}

// alive fails where the program has ended.
func (s *terminal) alive() {
	s.t.Helper()
	if err := s.cmd.Process.Signal(syscall.Signal(0)); errors.Is(err, os.ErrProcessDone) {
		s.t.Fatalf("the program has ended:\n%s", tail(s.sent(), 2000))
	}
}

// restored checks that the person gets the terminal back: the last word on the
// alternate screen is to leave it, and on the cursor to show it.
func (s *terminal) restored() {
	s.t.Helper()
	text := s.sent()
	for _, mode := range []struct{ what, off, on string }{
		{"the alternate screen is left", "\x1b[?1049h", "\x1b[?1049l"},
		{"the cursor is shown", "\x1b[?25l", "\x1b[?25h"},
		{"pastes come plain again", "\x1b[?2004h", "\x1b[?2004l"},
	} {
		if strings.LastIndex(text, mode.on) < strings.LastIndex(text, mode.off) || !strings.Contains(text, mode.on) {
			s.t.Errorf("not so at the end: %s", mode.what)
		}
	}
}
