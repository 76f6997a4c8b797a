package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/creack/pty"

	"contralay/model/shorttest"
)

// asks is what a terminal answers: its colours (OSC 4 and 10 to 19 with a question mark), its cursor and status
// (DSR), what it is (DA, XTVERSION) and its modes (DECRQM).
var asks = regexp.MustCompile("\x1b\\](4;[0-9]+|1[0-9]);\\?|\x1b\\[\\??[56]n|\x1b\\[[>=]?[0-9]*c|\x1b\\[>[0-9]*q|\x1b\\[\\??[0-9]*\\$p")

// A terminal that answers nothing must not hold up the start: the terminal library alone would ask for its background
// colour and wait five seconds for it. How long the start takes is the machine's; that nothing is asked is ours.
func TestMuteTerminal(t *testing.T) {
	t.Parallel()
	s := start(t, 80, 24, nil, example)
	s.see(steps[0])
	if asked := asks.FindAllString(s.sent(), -1); len(asked) > 0 {
		t.Errorf("the start asks the terminal %q and may wait for an answer that never comes", asked)
	}
}

// steps are the screens of the five steps, told by the rail.
var steps = []string{"WIRES", "LAYERS", "FILL", "SHEATH", "BUILD"}

// tour shows every step and what opens over them.
func tour(s *terminal, each func(where string)) {
	s.t.Helper()
	for k, step := range steps {
		if k > 0 {
			s.press(right)
		}
		s.see(step)
		each(step)
	}
	for range steps[1:] {
		s.changed(left)
	}
	s.see(steps[0])
	s.changed(enter) // one wire
	each("wire")
	s.changed(left)
	s.press(right)
	s.see(steps[1])
	s.changed(enter) // one layer
	each("layer")
	s.changed(left)
	s.press(esc)
	s.see("BRANCHES")
	each("branches")
	s.press(esc)
	s.see("MENU")
	each("menu")
	s.press("h")
	s.see("HELP")
	each("help")
}

var (
	// control is what a terminal takes as an order, not as text (ECMA-48).
	control = regexp.MustCompile("\x1b\\[[0-?]*[ -/]*[@-~]|\x1b\\][^\x07\x1b]*(\x07|\x1b\\\\)|\x1b[ -/]*[0-~]")
	begun   = regexp.MustCompile("\x1b(\\[[0-?]*[ -/]*|\\][^\x07\x1b]*|[ -/]*)$") // a sequence whose end is still to come
	// colour is the part of SGR that sets a colour, or weight and reverse.
	sgr = regexp.MustCompile("\x1b\\[[0-9;:]*m")
)

// foreign is the example under a name that plain characters cannot write.
func foreign(t *testing.T) string {
	t.Helper()
	text := strings.NewReplacer("Hill-climb single-seater, injector loom", "Bergrennwagen, Kabelbaum für 4 Düsen — µΩ",
		"Trunk", "Trünk",
		"Coolant switch", "Kühlmittel °C").
		Replace(readFile(t, example))
	return fileOf(t, "foreign.toml", text)
}

func TestPlainCharacters(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	for _, c := range shorttest.Some([]struct {
		name string
		env  []string
		args []string
	}{
		{"asked for", nil, []string{"--ascii"}},
		{"no locale", []string{"LANG="}, nil},
		{"plain locale", []string{"LANG=C"}, nil},
		{"overruled locale", []string{"LC_ALL=C"}, nil},
		{"linux console", []string{"TERM=linux"}, nil},
	}) {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			s := start(t, 100, 30, c.env, append(c.args, foreign(t))...)
			at := 0
			tour(s, func(where string) {
				all := s.sent() // while a search goes on, something is always on its way
				end := len(all) - len(begun.FindString(all))
				text := control.ReplaceAllString(all[at:end], "")
				at = end
				for _, r := range text {
					if r != '\r' && r != '\n' && (r < ' ' || r > '~') {
						t.Errorf("%s: %q is sent; all must be plain characters", where, r)
						return
					}
				}
			})
		})
	}
}

func TestNoColour(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	for _, c := range shorttest.Some([]struct {
		name string
		env  []string
		args []string
	}{
		{"NO_COLOR", []string{"NO_COLOR=1"}, nil},
		{"--colour never", nil, []string{"--colour", "never"}},
	}) {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			s := start(t, 100, 30, c.env, append(c.args, example)...)
			tour(s, func(where string) {
				if where != "help" {
					if line, words := hand(s.text()); line < 2 || words == ">" {
						t.Errorf("%s: no sign at the row in hand:\n%s", where, s.text())
					}
				}
			})
			for _, code := range sgr.FindAllString(s.sent(), -1) {
				if code != "\x1b[m" && code != "\x1b[0m" {
					t.Errorf("%q is sent without colour", code)
					return
				}
			}
		})
	}
}

// Colour says nothing that sign and word do not say: with and without, the text is
// the same. The section is left out, it is drawn finer in colour.
func TestColourAddsNothing(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	colour, plain := start(t, 100, 30, nil, example, "--colour", "always"), start(t, 100, 30, nil, example, "--colour", "never")
	words := func(screen string) string {
		lines := strings.Split(screen, "\n")
		for k := range lines {
			lines[k] = strings.TrimRight(leftPane(lines[k]), " ")
		}
		return strings.Join(lines, "\n")
	}
	for k, step := range steps {
		if k > 0 {
			colour.press(right)
			plain.press(right)
		}
		for _, s := range []*terminal{colour, plain} {
			s.until(step+" with all worked out", func(screen string) bool {
				return strings.Contains(screen, step) && strings.Contains(screen, "OD 5.4~ (") && !strings.Contains(screen, "working out")
			})
		}
		// A screen may be read while it is being drawn: what counts is what they come to.
		plain.until("the words that stand there in colour:\n"+words(colour.text()),
			func(screen string) bool { return words(screen) == words(colour.text()) })
	}
	if !sgr.MatchString(colour.sent()) {
		t.Error("--colour always sets none")
	}
}

// What the bench refuses on a terminal is said plainly, before the screen is taken.
func TestRefusedOnTerminal(t *testing.T) {
	t.Parallel()
	dir := t.TempDir()
	bad := fileOf(t, "bad.toml", "format = 1\n[harness]\nname =\n")
	for _, c := range []struct {
		name string
		env  []string
		arg  string
		says []string
	}{
		{"dumb terminal", []string{"TERM=dumb"}, example, []string{"TERM=dumb", "check"}},
		{"missing file", nil, filepath.Join(dir, "none.toml"), []string{"none.toml"}},
		{"unknown command alone", nil, "frobnicate", []string{"frobnicate"}},
		{"folder", nil, dir, []string{"folder"}},
		{"not TOML", nil, bad, []string{"bad.toml:3"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := start(t, 200, 24, c.env, c.arg)
			if code := s.ends(); code != 2 {
				t.Errorf("exit %d, want 2", code)
			}
			text := s.sent()
			for _, w := range c.says {
				if !strings.Contains(text, w) {
					t.Errorf("%q does not say %q", text, w)
				}
			}
			if strings.ContainsRune(text, '\x1b') || strings.Count(text, "\n") != 1 {
				t.Errorf("want one plain line, got %q", text)
			}
		})
	}
}

// One end on a terminal is not enough: no frame may land in a file or a pipe.
func TestHalfTerminal(t *testing.T) {
	for _, way := range []string{"output to a file", "input from a pipe"} {
		t.Run(way, func(t *testing.T) {
			master, slave, err := pty.Open()
			if err != nil {
				t.Skipf("no pseudo-terminal can be opened here: %v", err)
			}
			defer master.Close()
			defer slave.Close()
			other, err := os.Create(filepath.Join(t.TempDir(), "frames"))
			if err != nil {
				t.Fatal(err)
			}
			defer other.Close()
			cmd := exec.Command(built, example)
			cmd.Env = environ(t)
			var errs strings.Builder
			cmd.Stdin, cmd.Stdout, cmd.Stderr = slave, other, &errs
			if way == "input from a pipe" {
				cmd.Stdin, cmd.Stdout = strings.NewReader("q"), slave
			}
			_ = cmd.Run()
			o := outcome{readFile(t, other.Name()), errs.String(), cmd.ProcessState.ExitCode()}
			o.clean(t, []string{way})
			o.refused(t, 1, "check", "figures")
		})
	}
}

func TestResizeStorm(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	s := start(t, 120, 40, nil, example)
	s.see("WIRES", "HC2-INJ-01")
	s.press(right)
	s.see("LAYERS")
	for k := range 60 {
		s.resize(20+(k*37)%140, 5+(k*13)%50)
		time.Sleep(2 * time.Millisecond) // a person dragging a corner
	}
	for _, size := range [][2]int{{40, 12}, {34, 10}, {64, 16}, {80, 24}, {200, 60}, {120, 40}} {
		s.resize(size[0], size[1])
		what := fmt.Sprintf("head, rail and OD at %d x %d", size[0], size[1])
		s.until(what, func(screen string) bool {
			lines := strings.Split(screen, "\n")
			return len(lines) > 2 && strings.Contains(lines[0], "T1") && strings.Contains(lines[0], "saved") &&
				strings.HasPrefix(strings.TrimSpace(lines[1]), "Wires") && strings.Contains(screen, "OD 5.4~ (")
		})
	}
	s.resize(20, 5)
	s.until("one sentence at 20 x 5", func(screen string) bool { return strings.HasPrefix(screen, "The bench needs") })
	s.press(down) // a key on the small screen is no harm
	s.resize(1, 1)
	s.resize(80, 24)
	s.see("LAYERS", "OD 5.4~ (")
	s.alive()
	s.press("q")
	if code := s.ends(); code != 0 {
		t.Errorf("exit %d", code)
	}
	s.restored()
}
