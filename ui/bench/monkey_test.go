package bench_test

import (
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/draw"
)

// monkeyKeys is how many random keys are pressed in all, from every screen in turn; in the long form.
const monkeyKeys = 20_000

// Random keys from every screen: no panic, a valid screen after each, the file is
// written only where a save was asked for, and undo to the start gives the bytes
// that were there.
func TestMonkey(t *testing.T) {
	screens := benchtest.Screens()
	each := monkeyKeys / len(screens)
	if !shorttest.Long() {
		each /= 30
	}
	benchtest.EachOrSome(t, func(t *testing.T, screen string) {
		n := slices.Index(screens, screen)
		start := string(file.Encode(benchtest.Started(screen, benchtest.Config(t, "example.toml")).Doc))
		rng := rand.New(rand.NewPCG(uint64(n), 2026))
		for left := each; left > 0; {
			m := benchtest.OpenAt(t, "example.toml", screen)
			asked := false
			m.Cfg.Save = func(path string, d file.Document) error {
				if !asked {
					t.Fatalf("written to %s by a key that asks for nothing", path)
				}
				return nil
			}
			m.Cfg.Changed = func(string) bool { return rng.IntN(3) == 0 }
			sizes := [][2]int{{80, 24}, {120, 40}, {40, 12}, {33, 9}}
			for ; left > 0 && !m.Quit; left-- {
				k := benchtest.EveryKey[rng.IntN(len(benchtest.EveryKey))]
				if rng.IntN(50) == 0 {
					z := sizes[rng.IntN(len(sizes))]
					benchtest.Size(m, z[0], z[1])
				}
				asked = asksToSave(m, k)
				cmd := benchtest.Update(m, benchtest.Message(k))
				if cmd != nil && rng.IntN(20) == 0 { // plans join now and then
					if msg := cmd(); msg != nil {
						if _, quit := msg.(tea.QuitMsg); !quit {
							benchtest.Update(m, msg)
						}
					}
				} else if cmd != nil {
					m.Pending = map[string]bool{}
				}
				if m.Quit {
					break
				}
				lines := strings.Split(benchtest.View(m), "\n")
				if len(lines) != m.Height {
					t.Fatalf("after %q %d lines on a screen of %d", k, len(lines), m.Height)
				}
				for _, l := range lines {
					if draw.Width(l) > m.W {
						t.Fatalf("after %q a line of %d cells on a screen of %d: %q", k, draw.Width(l), m.W, l)
					}
				}
			}
			m.Entry, m.Quit = nil, false
			for m.History.Steps() > 0 {
				m.Undo()
			}
			if got := string(file.Encode(m.Doc())); got != start {
				t.Fatal("undo does not reach the start")
			}
		}
	})
}

// asksToSave reports whether a key asks for the file to be written, as a person reads
// the screen.
func asksToSave(m *desk.Model, k string) bool {
	if m.Entry != nil {
		return k == "enter" && strings.HasPrefix(m.Entry.Label, "save")
	}
	p := m.Page(m.ListWidth())
	if len(p.Rows) == 0 {
		return k == "s"
	}
	text := p.Rows[m.At(p)].Line()
	return k == "s" || (k == "enter" || k == "right") && strings.HasPrefix(text, "save") || k == "+" &&
		strings.HasPrefix(text, "write over")
}
