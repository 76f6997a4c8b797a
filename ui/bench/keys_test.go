package bench

import (
	"os"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"contralay/model/file"
	"contralay/ui/draw"
)

var everyKey = []string{"up", "down", "left", "right", "enter", "esc", "backspace", "delete", "tab", "ctrl+c", "ctrl+z",
	"pgdown", "end", "home", "0", "5", "9", "+", "-", "*", "/", ".", " ", "a", "b", "h", "m", "q", "r", "s", "u", "w", "x", "z", "Z", "?"}

// Every key answers: the screen changes, or one plain line says why not.
func TestEveryKeyAnswers(t *testing.T) {
	for name := range everyScreen {
		for _, k := range everyKey {
			m := openAt(t, "example.toml", name)
			m.says = ""
			before := m.View()
			press(m, k)
			if m.View() == before && !m.quit {
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
			if !m.dirty() {
				continue
			}
			for range 5 {
				press(m, k)
			}
			if m.quit {
				t.Errorf("%s: five times %q leaves with unsaved work", name, k)
			}
		}
	}
}

func TestBurstIsTheSameAsTyping(t *testing.T) {
	slow, fast := open(t, "example.toml"), open(t, "example.toml")
	press(slow, "1", "2", ".", "5", "enter")
	press(fast, "12.5", "enter")
	if d := cmp.Diff(slow.h, fast.h); d != "" {
		t.Errorf("a burst differs from typing:\n%s", d)
	}
	if got := slow.h.Wires[0].Amps.V; got != 12.5 {
		t.Errorf("the current is %v, want 12.5", got)
	}
}

func TestMergedRunesAreSplit(t *testing.T) {
	m := open(t, "example.toml")
	press(m, "mm") // mm, inch and back
	if m.sys != 0 {
		t.Errorf("two keys in one message counted as one")
	}
}

func TestPasteNeedsAnOpenField(t *testing.T) {
	m := open(t, "example.toml")
	before := m.h
	m.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("q\nsome text 12"), Paste: true})
	if m.h != before || m.quit || m.entry != nil || !m.trouble {
		t.Error("a paste outside a field did something")
	}
	goTo(t, m, "enter", "@colour ", "9") // of the first wire, with something typed
	press(m, "backspace")
	m.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("9\x1b6\n"), Paste: true})
	press(m, "enter")
	if got := m.h.Wires[0].Colour.V; got != "96" {
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
		m := ready(New(Config{Doc: d, Path: "example.toml", Cat: cat, Palette: draw.Palette{}}))
		keys := rapid.SliceOfN(rapid.SampledFrom(everyKey), 1, 120).Draw(t, "keys")
		for _, k := range keys {
			if m.quit {
				break
			}
			press(m, k)
			if got := len(strings.Split(m.View(), "\n")); got != m.height && !m.quit {
				t.Fatalf("after %q the screen has %d lines", k, got)
			}
		}
		m.entry, m.quit = nil, false
		for len(m.undo) > 0 {
			m.undoOne()
		}
		if string(file.Encode(m.doc())) != string(start) {
			t.Fatalf("undo does not reach the start after %q", keys)
		}
	})
}

func TestQuitAsksWhereWorkWouldBeLost(t *testing.T) {
	m := open(t, "example.toml")
	press(m, "+", "q", "q", "q", "enter")
	if m.quit || m.top() == "quit" {
		t.Fatal("the first row keeps working")
	}
	press(m, "q", "down", "down", "enter")
	if m.quit {
		t.Fatal("Enter must not discard")
	}
	press(m, "+")
	if !m.quit {
		t.Fatal("+ on the row discards")
	}
	m = open(t, "example.toml")
	if press(m, "q"); !m.quit {
		t.Fatal("nothing to lose: q leaves")
	}
}

func TestSaveFailsLoudlyAndKeepsWork(t *testing.T) {
	m := open(t, "example.toml")
	m.cfg.Save = func(string, file.Document) error { return os.ErrPermission }
	press(m, "+", "s")
	if !m.dirty() || !m.trouble || !strings.Contains(m.View(), "not saved") {
		t.Errorf("a save that failed must say so: %q", m.says)
	}
	press(m, "q", "down", "enter")
	if m.quit {
		t.Error("save, then quit must not quit when the save failed")
	}
}

func TestBarIsShortAndLive(t *testing.T) {
	for name := range everyScreen {
		m := openAt(t, "example.toml", name)
		p := m.page(m.listWidth())
		var r *row
		if len(p.rows) > 0 {
			r = &p.rows[m.at(p)]
		}
		if b := m.bar(r); b == "" || draw.Width(b) > 80 {
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
	if want := KeyList(); !strings.Contains(string(b), want) {
		t.Errorf("the README's key list is stale; it should be:\n%s", want)
	}
}
