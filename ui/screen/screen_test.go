package screen

import (
	"bytes"
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"sync"
	"testing"
	"testing/synctest"
	"time"
	"unicode/utf8"

	"github.com/charmbracelet/x/ansi"
	"github.com/charmbracelet/x/vt"
	"pgregory.net/rapid"

	"contralay/model/visible"
)

// tube is a terminal that remembers what was written.
type tube struct {
	mu  sync.Mutex
	all bytes.Buffer
	vt  *vt.Emulator
}

func (t *tube) Write(p []byte) (int, error) {
	t.mu.Lock()
	defer t.mu.Unlock()
	t.all.Write(p)
	return t.vt.Write(p)
}

func (t *tube) shows() string {
	t.mu.Lock()
	defer t.mu.Unlock()
	lines := strings.Split(t.vt.String(), "\n")
	for k := range lines {
		lines[k] = strings.TrimRight(lines[k], " \r")
	}
	return strings.TrimRight(strings.Join(lines, "\n"), "\n")
}

func (t *tube) sent() int {
	t.mu.Lock()
	defer t.mu.Unlock()
	return t.all.Len()
}

// Whatever frames were shown, the terminal shows the last, full lines included. The clock is that
// of the test: nobody waits for the pauses.
func TestTheLastFrameStands(t *testing.T) {
	const w, h = 20, 6
	type step struct {
		text          string
		resize, pause bool
	}
	rapid.Check(t, func(r *rapid.T) {
		line := rapid.StringMatching(`[ab .]{0,20}`)
		var steps []step
		for range rapid.IntRange(1, 12).Draw(r, "frames") {
			lines := rapid.SliceOfN(line, 1, h).Draw(r, "lines")
			steps = append(steps, step{text: strings.Join(lines, "\n"), resize: rapid.IntRange(0, 5).Draw(r, "resize") == 0,
				pause: rapid.Bool().Draw(r, "pause")})
		}
		got := ""
		synctest.Test(t, func(*testing.T) {
			out := &tube{vt: vt.NewEmulator(w, h)}
			s := New(out, w)
			for _, step := range steps {
				if step.resize {
					s.Resize(w)
				}
				s.Show(step.text)
				if step.pause {
					time.Sleep(Apart)
				}
			}
			time.Sleep(2 * Apart)
			got = out.shows()
		})
		var want []string
		for _, l := range strings.Split(steps[len(steps)-1].text, "\n") {
			want = append(want, strings.TrimRight(l, " "))
		}
		if got != strings.TrimRight(strings.Join(want, "\n"), "\n") {
			r.Fatalf("it shows\n%q\nwant\n%q", got, want)
		}
	})
}

// A frame that is the same writes nothing; one line that changed writes that line.
func TestOnlyWhatChanged(t *testing.T) {
	out := &tube{vt: vt.NewEmulator(80, 24)}
	s := New(out, 80)
	frame := func(n int) string { return strings.Repeat("a long line that stays as it is\n", 20) + fmt.Sprint(n) }
	s.Show(frame(1))
	before := out.sent()
	for range 50 {
		time.Sleep(Apart / 10)
		s.Show(frame(1))
	}
	time.Sleep(2 * Apart)
	if n := out.sent() - before; n != 0 {
		t.Errorf("the same frame sends %d bytes", n)
	}
	s.Show(frame(2))
	time.Sleep(2 * Apart)
	if n := out.sent() - before; n == 0 || n > 20 {
		t.Errorf("one digit sends %d bytes", n)
	}
}

// Frames in one rush are folded: a few are written, the last among them.
func TestARushIsFolded(t *testing.T) {
	out := &tube{vt: vt.NewEmulator(80, 24)}
	s := New(out, 80)
	s.Show("0")
	before := out.sent()
	for n := range 5000 {
		s.Show(fmt.Sprint(n))
	}
	time.Sleep(3 * Apart)
	if got := out.shows(); got != "4999" {
		t.Errorf("it shows %q", got)
	}
	if n := out.sent() - before; n > 5000 {
		t.Errorf("%d bytes for frames that nobody sees", n)
	}
}

// The terminal comes back, once, and nothing is written after.
func TestLeave(t *testing.T) {
	out := &tube{vt: vt.NewEmulator(80, 24)}
	s := New(out, 80)
	s.Leave()
	if out.sent() != 0 {
		t.Error("nothing was shown, and something is taken back")
	}
	s = New(out, 80)
	s.Show("x")
	s.Show("y")
	s.Leave()
	s.Leave()
	s.Show("z")
	time.Sleep(2 * Apart)
	if text := out.all.String(); !strings.HasSuffix(text, leave) || strings.Count(text, leave) != 1 || strings.Contains(text, "z") {
		t.Errorf("%q", text)
	}
}

// ours are the sequences that the program itself sends: its own screen, the cursor, colours.
var ours = regexp.MustCompile(`\x1b\[\?(1049|25|2004)[hl]|\x1b\[2J|\x1b\[K|\x1b\[[0-9]*(;[0-9]*)*[HGm]`)

// to is where the cursor is put: a line and a column, or a column of the same line.
var to = regexp.MustCompile(`\x1b\[(?:[0-9]+;)?([0-9]+)[HG]`)

// The last gate: whatever a frame holds, no byte commands the terminal but the program's own
// sequences, and no line grows over the next.
func TestNothingCommandsTheTerminal(t *testing.T) {
	pieces := []string{"ab", "─", "é", "線", "\x1b[1;31m", "\x1b[0m", "\x1b[38;5;73m", "\x00", "\x07", "\t", "\r", "\x1b",
		"\x1b]52;c;QUJD\x07",
		"\x1b[3;1H", "\x1b[?1049l", "\x1bP0q\x1b\\", "\x1bc", "\u009b2J", "\x9b2J", "\u0085", "\x7f", "\u202e", "\u200b", "\ufeff",
		"\u2028", "\xff"}
	rapid.Check(t, func(r *rapid.T) {
		const w = 20
		var out bytes.Buffer
		s := New(&out, w)
		line := rapid.Map(rapid.SliceOfN(rapid.SampledFrom(pieces), 0, 8), func(p []string) string { return strings.Join(p, "") })
		s.Show(strings.Join(rapid.SliceOfN(line, 1, 5).Draw(r, "lines"), "\n"))
		s.Leave()
		sent := out.String()
		rest := ours.ReplaceAllString(sent, "")
		if c, found := visible.Find(rest); found || !utf8.ValidString(rest) {
			r.Fatalf("%q holds %U outside the program's own sequences", sent, c)
		}
		at := to.FindAllStringSubmatch(sent, -1)
		for n, part := range to.Split(sent, -1) {
			if n == 0 {
				continue
			}
			column, err := strconv.Atoi(at[n-1][1])
			if cells := ansi.StringWidth(ours.ReplaceAllString(part, "")); err != nil || column-1+cells > w {
				r.Fatalf("%q takes %d cells from column %d on a screen of %d", part, cells, column, w)
			}
		}
	})
}
