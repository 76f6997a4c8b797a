package bench

import (
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
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
		for _, r := range m.h.Reels {
			if r.Size == "22" {
				got = float64(r.OverMM)
			}
		}
		if got < c.want-1e-9 || got > c.want+1e-9 || m.trouble != c.trouble || !strings.Contains(m.says, c.says) {
			t.Errorf("%s: %v, %v %q", c.typed, got, m.trouble, m.says)
		}
	}
}

// Letters never get into a number.
func TestNoLettersInNumbers(t *testing.T) {
	m := open(t, "example.toml")
	press(m, "2", "a", "x", ".", "5")
	if m.entry == nil || m.entry.draft != "2.5" {
		t.Errorf("draft %+v", m.entry)
	}
}

// + moves a component out and - takes it back, with the cursor on it all the way.
func TestMovedComponentStaysInHand(t *testing.T) {
	m := openAt(t, "demo.toml", "layer")
	before := m.h
	p := m.page(m.listWidth())
	id := p.rows[m.at(p)].id
	press(m, "+")
	p = m.page(m.listWidth())
	if got := p.rows[m.at(p)].id; got != id || m.trouble {
		t.Fatalf("moved %s, in hand is %s: %s", id, got, m.says)
	}
	press(m, "-")
	was, now := before.Branches[0].Layers, m.h.Branches[0].Layers
	for k := range was {
		if !sameSet(was[k].Of, now[k].Of) {
			t.Errorf("layer %d holds %v, before %v", k, now[k].Of, was[k].Of)
		}
	}
}

// What changes nothing is no step to undo, and what is as the file has it is saved.
func TestNothingIsNoChange(t *testing.T) {
	m := open(t, "demo.toml")
	press(m, "enter", "enter", "backspace", "backspace", "backspace", "backspace", "backspace", "enter") // an empty reel where none was measured
	if len(m.undo) != 0 || m.dirty() {
		t.Errorf("%d steps, dirty %v: %s", len(m.undo), m.dirty(), m.says)
	}
	press(m, "esc", "+", "-")
	if len(m.undo) != 2 || m.dirty() {
		t.Errorf("there and back: %d steps, dirty %v", len(m.undo), m.dirty())
	}
	press(m, "+", "q")
	if v := m.View(); !strings.Contains(v, "discard 1 change:") {
		t.Errorf("one thing differs from the file:\n%s", v)
	}
}

// Backspace on a page that is only read goes back and undoes nothing.
func TestBackspaceOnPagesToRead(t *testing.T) {
	for _, screen := range []string{"why", "figures", "help"} {
		m := openAt(t, "demo.toml", screen)
		press(m, "esc")
		top := m.top()
		m = openAt(t, "demo.toml", "")
		press(m, "+")
		press(m, everyScreen[screen]...)
		if !strings.Contains(m.View(), "Backspace back") {
			t.Errorf("%s: the bar says otherwise", screen)
		}
		press(m, "backspace")
		if m.top() != top || len(m.undo) != 1 {
			t.Errorf("%s: on %s with %d steps", screen, m.top(), len(m.undo))
		}
	}
}

func TestPageKeys(t *testing.T) {
	m := openAt(t, "demo.toml", "build")
	last := len(m.page(m.listWidth()).rows) - 1
	for _, c := range []struct {
		key  tea.KeyType
		want int
	}{{tea.KeyEnd, last}, {tea.KeyHome, 0}, {tea.KeyPgDown, 10}, {tea.KeyPgDown, 20}, {tea.KeyPgUp, 10}} {
		m.Update(tea.KeyMsg{Type: c.key})
		if at := m.at(m.page(m.listWidth())); at != c.want {
			t.Errorf("key %v: row %d, want %d", c.key, at, c.want)
		}
	}
}

// A stop is read whole where the line under it is free.
func TestLongSnagTakesTwoLines(t *testing.T) {
	m := open(t, "example.toml")
	m.Update(tea.WindowSizeMsg{Width: 80, Height: 24})
	press(m, "right", "right", "right")
	m.says = ""
	v := strings.Split(m.View(), "\n")
	if n := len(v); !strings.HasPrefix(v[n-3], "? warn P1") || strings.Contains(v[n-3], "…") || !strings.Contains(v[n-2], "on Build") {
		t.Errorf("%q", v[len(v)-3:])
	}
}
