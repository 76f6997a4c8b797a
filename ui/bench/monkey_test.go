package bench

import (
	"math/rand/v2"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/model/file"
	"contralay/ui/draw"
)

// monkeyKeys is how many random keys are pressed in all, from every screen in turn.
const monkeyKeys = 20_000

// Random keys from every screen: no panic, a valid screen after each, the file is
// written only where a save was asked for, and undo to the start gives the bytes
// that were there.
func TestMonkey(t *testing.T) {
	screens := slices.Sorted(func(yield func(string) bool) {
		for s := range everyScreen {
			if !yield(s) {
				return
			}
		}
	})
	each := monkeyKeys / len(screens)
	if testing.Short() {
		each /= 20
	}
	d, err := file.Load(filepath.Join("..", "..", "testdata", "example.toml"))
	if err != nil {
		t.Fatal(err)
	}
	start := string(file.Encode(d))
	pressed := 0
	for n, screen := range screens {
		rng := rand.New(rand.NewPCG(uint64(n), 2026))
		for left := each; left > 0; {
			m := openAt(t, "example.toml", screen)
			asked := false
			m.cfg.Save = func(path string, d file.Document) error {
				if !asked {
					t.Fatalf("%s: written to %s by a key that asks for nothing", screen, path)
				}
				return nil
			}
			m.cfg.Changed = func(string) bool { return rng.IntN(3) == 0 }
			sizes := [][2]int{{80, 24}, {120, 40}, {40, 12}, {33, 9}}
			for ; left > 0 && !m.quit; left-- {
				k := everyKey[rng.IntN(len(everyKey))]
				if rng.IntN(50) == 0 {
					z := sizes[rng.IntN(len(sizes))]
					m.Update(tea.WindowSizeMsg{Width: z[0], Height: z[1]})
				}
				asked = m.asksToSave(k)
				_, cmd := m.Update(message(k))
				if cmd != nil && rng.IntN(20) == 0 && m.search == nil { // plans join now and then
					if msg := cmd(); msg != nil {
						if _, quit := msg.(tea.QuitMsg); !quit {
							m.Update(msg)
						}
					}
				} else if cmd != nil {
					m.pending = map[string]bool{}
				}
				pressed++
				if m.quit {
					break
				}
				lines := strings.Split(m.View(), "\n")
				if len(lines) != m.height {
					t.Fatalf("%s: after %q %d lines on a screen of %d", screen, k, len(lines), m.height)
				}
				for _, l := range lines {
					if draw.Width(l) > m.w {
						t.Fatalf("%s: after %q a line of %d cells on a screen of %d: %q", screen, k, draw.Width(l), m.w, l)
					}
				}
			}
			m.entry, m.quit = nil, false
			for len(m.undo) > 0 {
				m.undoOne()
			}
			if got := string(file.Encode(m.doc())); got != start {
				t.Fatalf("%s: undo does not reach the start", screen)
			}
		}
	}
	t.Logf("%d keys", pressed)
}

// asksToSave reports whether a key asks for the file to be written, as a person reads
// the screen.
func (m *Model) asksToSave(k string) bool {
	if m.entry != nil {
		return k == "enter" && strings.HasPrefix(m.entry.label, "save")
	}
	p := m.page(m.listWidth())
	if len(p.rows) == 0 {
		return k == "s"
	}
	text := p.rows[m.at(p)].line()
	return k == "s" || (k == "enter" || k == "right") && strings.HasPrefix(text, "save") || k == "+" && strings.HasPrefix(text, "write over")
}
