package main

import (
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/model/shorttest"
)

// What people complain of in programs of the terminal, each with its test. Those
// with tests of their own elsewhere: one stray key, a confirming key, pastes, a slow
// start, work lost on close (recover_test), small windows, colours, plain characters,
// no terminal, lag.

// panics names the setting that makes the test binary a program with a fault.
const panics = "CONTRALAY_TEST_PANICS"

// fault is a bench that falls over on the key X.
type fault struct{ tea.Model }

func faulty(m tea.Model) tea.Model { return fault{m} }

func (f fault) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	if k, is := msg.(tea.KeyMsg); is && k.String() == "x" {
		panic("a fault on purpose")
	}
	_, cmd := f.Model.Update(msg)
	return f, cmd
}

// A fault in the program gives the terminal back and keeps the work.
func TestFaultKeepsWorkAndTerminal(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	dir, env := state(t)
	name := copyOfExample(t)
	cmd := exec.Command(os.Args[0], name)
	cmd.Env = environ(t, env, panics+"=1")
	s := startCommand(t, 100, 30, cmd)
	s.see("WIRES")
	s.press("3.5" + enter)
	s.see("not saved", "3.5 A")
	s.press("x")
	<-s.gone
	s.restored()
	if !strings.Contains(s.sent(), "offered when you open it again") {
		t.Errorf("nothing says where the work is:\n%s", tail(s.sent(), 500))
	}
	if len(filesIn(t, dir)) == 0 {
		t.Fatal("no journal")
	}
	s = start(t, 100, 30, []string{env}, name)
	s.see("Unsaved work on", "amps is 3.5")
}

// One cell changes: at most 2 kB are sent, lines that stay are not sent again, and
// nothing at all is sent while nobody presses a key.
func TestFewBytes(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	s := start(t, 80, 24, nil, fileOf(t, "many.toml", manyWires()))
	s.laid()
	s.changed(enter)
	s.toRow("current")
	s.changed("1")
	before := len(s.sent())
	s.changed("2") // a digit more in an open field
	sent := s.sent()[before:]
	if n := len(sent); n > 2000 {
		t.Errorf("a digit sends %d bytes", n)
	}
	for _, stays := range []string{"WIRES", strings.TrimSpace(overLine.FindString(s.text()))} {
		if stays == "" || !strings.Contains(s.sent()[:before], stays) {
			t.Errorf("%q was never sent, so that it cannot be sent again", stays)
		}
		if strings.Contains(sent, stays) {
			t.Errorf("lines that stay are sent again: %q", sent)
		}
	}
	t.Logf("a digit in an open field sends %d bytes", len(sent))
	s.press(esc)
	s.see("left as it was")
	before = len(s.sent())
	s.changed(down)
	t.Logf("a row further sends %d bytes", len(s.sent())-before)
	if n := len(s.sent()) - before; n > 2000 {
		t.Errorf("a row further sends %d bytes", n)
	}
}

// A locale whose terminals draw some signs twice as wide, a build machine's setting,
// and a plain one give the same screens. The edges of the section are finer where there are more
// colours; its numbers stay where they are.
func TestLocalesAndSettings(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	var want []string
	s := start(t, 100, 30, nil, example)
	tour(s, func(string) {
		s.until("everything worked out", func(screen string) bool { return !strings.Contains(screen, "working ") })
		for last := ""; last != s.text(); { // on a busy machine a frame comes in pieces, and what is worked out comes after it
			last = s.text()
			time.Sleep(16 * quiet)
		}
		want = append(want, withoutBlocks(s.text()))
	})
	settings := []string{"LANG=zh_CN.UTF-8", "LC_ALL=ja_JP.UTF-8", "CI=1", "TERM=screen-256color", "TERM=tmux-256color",
		"COLORTERM=truecolor"}
	if at := rand.IntN(3); !shorttest.Long() { // two of them, others in each run
		settings = settings[2*at : 2*at+2]
	}
	for _, env := range settings {
		t.Run(env, func(t *testing.T) {
			t.Parallel()
			n := 0
			s := start(t, 100, 30, []string{env}, example)
			tour(s, func(where string) {
				s.until("the same screen, "+where+":\n"+want[n], func(screen string) bool { return withoutBlocks(screen) == want[n] })
				n++
			})
		})
	}
}

// withoutBlocks is a screen with blanks in place of half blocks.
func withoutBlocks(screen string) string {
	lines := strings.Split(strings.NewReplacer("▀", " ", "▄", " ").Replace(screen), "\n")
	for k := range lines {
		lines[k] = strings.TrimRight(lines[k], " ")
	}
	return strings.Join(lines, "\n")
}

// Reading keys from anywhere but the standard input breaks resizing on Windows.
func TestNoOtherInput(t *testing.T) {
	for _, dir := range []string{".", filepath.Join("..", "..", "ui", "bench")} {
		files, err := filepath.Glob(filepath.Join(dir, "*.go"))
		if err != nil || len(files) == 0 {
			t.Fatal(dir, err)
		}
		for _, f := range files {
			if !strings.HasSuffix(f, "_test.go") && strings.Contains(readFile(t, f), "WithInputTTY") {
				t.Errorf("%s uses WithInputTTY", f)
			}
		}
	}
}
