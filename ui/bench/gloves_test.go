package bench_test

import (
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/ui/bench"
	"contralay/ui/bench/desk"
)

// Ten wires side by side, typed as they are measured, are told from one.
func TestTenSideBySide(t *testing.T) {
	for _, c := range []struct {
		typed, says string
		want        float64
		trouble     bool
	}{
		{"1.08", "measures 1.08", 1.08, false},
		{"10.8", "ten side by side", 1.08, false},
		{"10.8/10", "measures 1.08", 1.08, false},
		{"2.4", "is that the right reel?", 2.4, true},
		{"80", "out of range: 0.20 to 30.00 mm", 0, true},
	} {
		m := open(t, "demo.toml")
		press(m, "enter", "enter", c.typed, "enter")
		got := 0.0
		for _, r := range m.H.Reels {
			if r.Size == "22" {
				got = float64(r.OverMM)
			}
		}
		if got < c.want-1e-9 || got > c.want+1e-9 || m.Trouble != c.trouble || !strings.Contains(m.Says, c.says) {
			t.Errorf("%s: %v, %v %q", c.typed, got, m.Trouble, m.Says)
		}
	}
}

// Letters never get into a number.
func TestNoLettersInNumbers(t *testing.T) {
	m := open(t, "example.toml")
	press(m, "2", "a", "x", ".", "5")
	if m.Entry == nil || m.Entry.Draft != "2.5" {
		t.Errorf("draft %+v", m.Entry)
	}
}

// + moves a component out and - takes it back, with the cursor on it all the way.
func TestMovedComponentStaysInHand(t *testing.T) {
	m := openAt(t, "demo.toml", "layer")
	before := m.H
	p := m.Page(m.ListWidth())
	id := p.Rows[m.At(p)].Id
	press(m, "+")
	p = m.Page(m.ListWidth())
	if got := p.Rows[m.At(p)].Id; got != id || m.Trouble {
		t.Fatalf("moved %s, in hand is %s: %s", id, got, m.Says)
	}
	press(m, "-")
	was, now := before.Branches[0].Layers, m.H.Branches[0].Layers
	for k := range was {
		if !desk.SameSet(was[k].Of, now[k].Of) {
			t.Errorf("layer %d holds %v, before %v", k, now[k].Of, was[k].Of)
		}
	}
}

// What changes nothing is no step to undo, and what is as the file has it is saved.
func TestNothingIsNoChange(t *testing.T) {
	m := open(t, "demo.toml")
	// an empty reel where none was measured
	press(m, "enter", "enter", "backspace", "backspace", "backspace", "backspace", "backspace", "enter")
	if len(m.Undo) != 0 || m.Dirty() {
		t.Errorf("%d steps, dirty %v: %s", len(m.Undo), m.Dirty(), m.Says)
	}
	press(m, "esc", "+", "-")
	if len(m.Undo) != 2 || m.Dirty() {
		t.Errorf("there and back: %d steps, dirty %v", len(m.Undo), m.Dirty())
	}
	press(m, "+", "q")
	if v := bench.View(m); !strings.Contains(v, "discard 1 change:") {
		t.Errorf("one thing differs from the file:\n%s", v)
	}
}

// Backspace on a page that is only read goes back and undoes nothing.
func TestBackspaceOnPagesToRead(t *testing.T) {
	for _, screen := range []string{"why", "figures", "help"} {
		m := openAt(t, "demo.toml", screen)
		press(m, "esc")
		top := m.Top()
		m = openAt(t, "demo.toml", "")
		press(m, "+")
		press(m, everyScreen[screen]...)
		if !strings.Contains(bench.View(m), "Backspace back") {
			t.Errorf("%s: the bar says otherwise", screen)
		}
		press(m, "backspace")
		if m.Top() != top || len(m.Undo) != 1 {
			t.Errorf("%s: on %s with %d steps", screen, m.Top(), len(m.Undo))
		}
	}
}

func TestPageKeys(t *testing.T) {
	m := openAt(t, "demo.toml", "build")
	last := len(m.Page(m.ListWidth()).Rows) - 1
	for _, c := range []struct {
		key  tea.KeyType
		want int
	}{{tea.KeyEnd, last}, {tea.KeyHome, 0}, {tea.KeyPgDown, 10}, {tea.KeyPgDown, 20}, {tea.KeyPgUp, 10}} {
		bench.Update(m, tea.KeyMsg{Type: c.key})
		if at := m.At(m.Page(m.ListWidth())); at != c.want {
			t.Errorf("key %v: row %d, want %d", c.key, at, c.want)
		}
	}
}

// A stop is read whole where the line under it is free.
func TestLongSnagTakesTwoLines(t *testing.T) {
	m := open(t, "example.toml")
	bench.Update(m, tea.WindowSizeMsg{Width: 80, Height: 24})
	press(m, "right", "right", "right")
	m.Says = ""
	v := strings.Split(bench.View(m), "\n")
	if n := len(v); !strings.HasPrefix(v[n-3], "? warn P1") || strings.Contains(v[n-3], "…") || !strings.Contains(v[n-2], "on Build") {
		t.Errorf("%q", v[len(v)-3:])
	}
}
