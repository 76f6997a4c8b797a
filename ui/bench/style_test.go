package bench

import (
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/ui/draw"
)

// Plain characters and colour go together: every screen in ASCII keeps its codes,
// and between them stand plain bytes only.
func TestASCIIKeepsColour(t *testing.T) {
	for name, keys := range everyScreen {
		m := open(t, "example.toml")
		m.cfg.ASCII, m.cfg.Palette = true, draw.Palette{Colour: true, Dark: true}
		press(m, keys...)
		m.Update(tea.WindowSizeMsg{Width: 80, Height: 24})
		v := m.View()
		if !strings.Contains(v, "\x1b[") {
			t.Errorf("%s: no colour left", name)
		}
		for _, r := range v {
			if r != '\n' && r != '\x1b' && (r < 0x20 || r > 0x7e) {
				t.Fatalf("%s shows %q", name, r)
			}
		}
	}
}
