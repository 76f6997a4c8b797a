package bench_test

import (
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/ui/bench/benchtest"
)

// Backspace on a page that is only read goes back and undoes nothing.
func TestBackspaceOnPagesToRead(t *testing.T) {
	for _, screen := range []string{"why", "figures", "help"} {
		m := benchtest.OpenAt(t, "example.toml", screen)
		benchtest.Press(m, "esc")
		top := m.Top()
		m = benchtest.OpenAt(t, "example.toml", "")
		benchtest.Press(m, "+")
		benchtest.GoTo(t, m, benchtest.EveryScreen[screen]...)
		if !strings.Contains(benchtest.View(m), "⌫ back") {
			t.Errorf("%s: the bar says otherwise", screen)
		}
		benchtest.Press(m, "backspace")
		if m.Top() != top || m.History.Steps() != 1 {
			t.Errorf("%s: on %s with %d steps", screen, m.Top(), m.History.Steps())
		}
	}
}

func TestPageKeys(t *testing.T) {
	m := benchtest.OpenAt(t, "demo.toml", "build")
	last := len(m.Page(m.ListWidth()).Rows) - 1
	for _, c := range []struct {
		key  tea.KeyType
		want int
	}{{tea.KeyEnd, last}, {tea.KeyHome, 0}, {tea.KeyPgDown, 10}, {tea.KeyPgDown, 20}, {tea.KeyPgUp, 10}} {
		benchtest.Update(m, tea.KeyMsg{Type: c.key})
		if at := m.At(m.Page(m.ListWidth())); at != c.want {
			t.Errorf("key %v: row %d, want %d", c.key, at, c.want)
		}
	}
}

// A stop is read whole where the line under it is free.
func TestLongSnagTakesTwoLines(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	benchtest.Size(m, 80, 24)
	benchtest.GoTo(t, m, "to sheath")
	m.Says = ""
	v := strings.Split(benchtest.View(m), "\n")
	if n := len(v); !strings.HasPrefix(v[n-3], " ? warn P1") || strings.Contains(v[n-3], "…") || !strings.Contains(v[n-2], "on Build") {
		t.Errorf("%q", v[len(v)-3:])
	}
}

// On the lowest screens, too, what a key answers hides no open point.
func TestAnswerHidesNoOpenPoint(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	for _, says := range []string{"", "an answer"} {
		benchtest.Size(m, 40, 12)
		m.Says = says
		v := benchtest.View(m)
		if !strings.Contains(v, "? warn P1") || !strings.Contains(v, says) || !strings.Contains(v, "OD 5.4") {
			t.Errorf("with %q:\n%s", says, v)
		}
	}
}
