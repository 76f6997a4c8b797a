package bench_test

import (
	"os"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"contralay/model/file"
	"contralay/ui/bench"
	"contralay/ui/bench/desk"
	"contralay/ui/draw"
)

var everyKey = []string{"up", "down", "left", "right", "enter", "esc", "backspace", "delete", "tab", "ctrl+c", "ctrl+z",
	"pgdown", "end", "home", "0", "5", "9", "+", "-", "*", "/", ".", " ", "a", "b", "h", "m", "q", "r", "s", "u", "w", "x", "z", "Z", "?"}

// Every key answers: the screen changes, or one plain line says why not.
func TestEveryKeyAnswers(t *testing.T) {
	for name := range everyScreen {
		for _, k := range everyKey {
			m := openAt(t, "example.toml", name)
			m.Says = ""
			before := bench.View(m)
			press(m, k)
			if bench.View(m) == before && !m.Quit {
				t.Errorf("%s: key %q changes nothing and says nothing", name, k)
			}
		}
	}
}

// However often one key is pressed, unsaved work is not lost and no file written
// over.
func TestNoKeyAloneIsHarmful(t *testing.T) {
	for name := range everyScreen {
		for _, k := range everyKey {
			m := openAt(t, "example.toml", name)
			press(m, "+") // something to lose, where + changes something
			if !m.Dirty() {
				continue
			}
			for range 5 {
				press(m, k)
			}
			if m.Quit {
				t.Errorf("%s: five times %q leaves with unsaved work", name, k)
			}
		}
	}
}

func TestBurstIsTheSameAsTyping(t *testing.T) {
	slow, fast := open(t, "example.toml"), open(t, "example.toml")
	press(slow, "1", "2", ".", "5", "enter")
	press(fast, "12.5", "enter")
	if d := cmp.Diff(slow.H, fast.H); d != "" {
		t.Errorf("a burst differs from typing:\n%s", d)
	}
	if got := slow.H.Wires[0].Amps.V; got != 12.5 {
		t.Errorf("the current is %v, want 12.5", got)
	}
}

func TestMergedRunesAreSplit(t *testing.T) {
	m := open(t, "example.toml")
	press(m, "mm") // mm, inch and back
	if m.Sys != 0 {
		t.Errorf("two keys in one message counted as one")
	}
}

func TestPasteNeedsAnOpenField(t *testing.T) {
	m := open(t, "example.toml")
	before := m.H
	bench.Update(m, tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("q\nsome text 12"), Paste: true})
	if m.H != before || m.Quit || m.Entry != nil || !m.Trouble {
		t.Error("a paste outside a field did something")
	}
	goTo(t, m, "enter", "@colour ", "9") // of the first wire, with something typed
	press(m, "backspace")
	bench.Update(m, tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("9\x1b6\n"), Paste: true})
	press(m, "enter")
	if got := m.H.Wires[0].Colour.V; got != "96" {
		t.Errorf("colour %q, want 96", got)
	}
}

// Random keys, then undo to the start: the harness is what it was, and nothing
// was written but by saving.
func TestUndoReachesTheStart(t *testing.T) {
	d, err := file.Load("../../testdata/example.toml")
	if err != nil {
		t.Fatal(err)
	}
	cat := entries(t)
	start := file.Encode(d)
	rapid.Check(t, func(t *rapid.T) {
		m := ready(bench.New(desk.Config{Doc: d, Path: "example.toml", Cat: cat, Palette: draw.Palette{}}))
		keys := rapid.SliceOfN(rapid.SampledFrom(everyKey), 1, 120).Draw(t, "keys")
		for _, k := range keys {
			if m.Quit {
				break
			}
			press(m, k)
			if got := len(strings.Split(bench.View(m), "\n")); got != m.Height && !m.Quit {
				t.Fatalf("after %q the screen has %d lines", k, got)
			}
		}
		m.Entry, m.Quit = nil, false
		for len(m.Undo) > 0 {
			bench.UndoOne(m)
		}
		if string(file.Encode(m.Doc())) != string(start) {
			t.Fatalf("undo does not reach the start after %q", keys)
		}
	})
}

func TestQuitAsksWhereWorkWouldBeLost(t *testing.T) {
	m := open(t, "example.toml")
	press(m, "+", "q", "q", "q", "enter")
	if m.Quit || m.Top() == "quit" {
		t.Fatal("the first row keeps working")
	}
	press(m, "q", "down", "down", "enter")
	if m.Quit {
		t.Fatal("Enter must not discard")
	}
	press(m, "+")
	if !m.Quit {
		t.Fatal("+ on the row discards")
	}
	m = open(t, "example.toml")
	if press(m, "q"); !m.Quit {
		t.Fatal("nothing to lose: q leaves")
	}
}

func TestSaveFailsLoudlyAndKeepsWork(t *testing.T) {
	m := open(t, "example.toml")
	m.Cfg.Save = func(string, file.Document) error { return os.ErrPermission }
	press(m, "+", "s")
	if !m.Dirty() || !m.Trouble || !strings.Contains(bench.View(m), "not saved") {
		t.Errorf("a save that failed must say so: %q", m.Says)
	}
	press(m, "q", "down", "enter")
	if m.Quit {
		t.Error("save, then quit must not quit when the save failed")
	}
}

func TestBarIsShortAndLive(t *testing.T) {
	for name := range everyScreen {
		m := openAt(t, "example.toml", name)
		p := m.Page(m.ListWidth())
		var r *desk.Row
		if len(p.Rows) > 0 {
			r = &p.Rows[m.At(p)]
		}
		if b := bench.Bar(m, r); b == "" || draw.Width(b) > 80 {
			t.Errorf("%s: bar of %d cells: %q", name, draw.Width(b), b)
		}
	}
}

// The README's key list is made from the table; this fails where they differ.
func TestReadmeKeys(t *testing.T) {
	b, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	if want := bench.KeyList(); !strings.Contains(string(b), want) {
		t.Errorf("the README's key list is stale; it should be:\n%s", want)
	}
}
