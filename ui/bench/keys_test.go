package bench_test

import (
	"os"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/google/go-cmp/cmp"

	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/ui/bench"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/draw"
)

// Every key answers: the screen changes, or one plain line says why not.
func TestEveryKeyAnswers(t *testing.T) {
	benchtest.EachOrSome(t, func(t *testing.T, screen string) {
		for i, k := range benchtest.EveryKey {
			if !benchtest.Turn(screen, i, 12) {
				continue
			}
			m := benchtest.OpenAt(t, "example.toml", screen)
			m.Says = ""
			before := benchtest.View(m)
			benchtest.Press(m, k)
			if benchtest.View(m) == before && !m.Quit {
				t.Errorf("key %q changes nothing and says nothing", k)
			}
		}
	})
}

// However often one key is pressed, unsaved work is not lost and no file written
// over.
func TestNoKeyAloneIsHarmful(t *testing.T) {
	benchtest.EachOrSome(t, func(t *testing.T, screen string) {
		for i, k := range benchtest.EveryKey {
			if !benchtest.Turn(screen, i, 12) {
				continue
			}
			m := benchtest.OpenAt(t, "example.toml", screen)
			benchtest.Press(m, "+") // something to lose, where + changes something
			if !m.Dirty() {
				return // it changes nothing here, whatever comes after
			}
			for range 5 {
				benchtest.Press(m, k)
			}
			if m.Quit {
				t.Errorf("five times %q leaves with unsaved work", k)
			}
		}
	})
}

func TestBurstIsTheSameAsTyping(t *testing.T) {
	slow, fast := benchtest.Open(t, "example.toml"), benchtest.Open(t, "example.toml")
	benchtest.Press(slow, "1", "2", ".", "5", "enter")
	benchtest.Press(fast, "12.5", "enter")
	if d := cmp.Diff(slow.H, fast.H); d != "" {
		t.Errorf("a burst differs from typing:\n%s", d)
	}
	if got := slow.H.Wires[0].Amps.V; got != 12.5 {
		t.Errorf("the current is %v, want 12.5", got)
	}
}

func TestMergedRunesAreSplit(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	benchtest.Press(m, "mm") // mm, inch and back
	if m.Sys != 0 {
		t.Errorf("two keys in one message counted as one")
	}
}

func TestPasteNeedsAnOpenField(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	before := m.H
	benchtest.Update(m, tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("q\nsome text 12"), Paste: true})
	if m.H != before || m.Quit || m.Entry != nil || !m.Trouble {
		t.Error("a paste outside a field did something")
	}
	benchtest.GoTo(t, m, "enter", "@colour ", "9") // of the first wire, with something typed
	benchtest.Press(m, "backspace")
	benchtest.Update(m, tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune("9\x1b6\n"), Paste: true})
	benchtest.Press(m, "enter")
	if got := m.H.Wires[0].Colour.V; got != "96" {
		t.Errorf("colour %q, want 96", got)
	}
}

func TestQuitAsksWhereWorkWouldBeLost(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	benchtest.Press(m, "+", "q", "q", "q", "enter")
	if m.Quit || m.Top() == "quit" {
		t.Fatal("the first row keeps working")
	}
	benchtest.Press(m, "q", "down", "down", "enter")
	if m.Quit {
		t.Fatal("Enter must not discard")
	}
	benchtest.Press(m, "+")
	if !m.Quit {
		t.Fatal("+ on the row discards")
	}
	m = benchtest.Open(t, "example.toml")
	if benchtest.Press(m, "q"); !m.Quit {
		t.Fatal("nothing to lose: q leaves")
	}
}

func TestSaveFailsLoudlyAndKeepsWork(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	m.Cfg.Save = func(string, file.Document) error { return os.ErrPermission }
	benchtest.Press(m, "+", "s")
	if !m.Dirty() || !m.Trouble || !strings.Contains(benchtest.View(m), "not saved") {
		t.Errorf("a save that failed must say so: %q", m.Says)
	}
	benchtest.Press(m, "q", "down", "enter")
	if m.Quit {
		t.Error("save, then quit must not quit when the save failed")
	}
}

func TestBarIsShortAndLive(t *testing.T) {
	shorttest.Turn(t)
	for name := range benchtest.EveryScreen {
		m := benchtest.OpenAt(t, "example.toml", name)
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
