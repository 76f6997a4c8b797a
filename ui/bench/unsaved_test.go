package bench_test

import (
	"errors"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
)

// unwrapped is a screen as one text, without the breaks of its lines.
func unwrapped(screen string) string { return strings.Join(strings.Fields(screen), " ") }

// What was not saved, or not printed, is said with its reason whole, on the smallest screen
// too, from every way to save; the open point stays.
func TestNotSavedEndsWithItsReason(t *testing.T) {
	shorttest.Turn(t)
	reasons := []string{"permission denied", "no space left on device", "file name too long", "its symbolic links go round in a circle",
		"it is not an ordinary file", "read-only file system"}
	long := "/srv/shop/looms/of/this/year/and/the/last/hill-climb-single-seater-engine-loom.toml"
	ways := []struct {
		way   string
		press func(m *desk.Model)
	}{
		{"S", func(m *desk.Model) { benchtest.Press(m, "s") }},
		{"the field", func(m *desk.Model) { m.File.Path = ""; benchtest.Press(m, "s", "enter") }},
		{"write over", func(m *desk.Model) {
			m.Cfg.Changed = func(string) bool { return true }
			benchtest.Press(m, "s", "down", "down", "+")
		}},
		{"print", func(m *desk.Model) { m.Step = "build"; benchtest.Press(m, "p") }},
	}
	for n, size := range [][2]int{{40, 12}, {80, 24}, {120, 40}, {34, 10}} {
		for k, reason := range reasons {
			err := errors.New(long + " was not saved, and the file there is as it was: open " + long + ": " + reason)
			for i, c := range ways {
				if !shorttest.Long() && (n+k+i)%3 > 0 {
					continue // each reason at each size, in other ways at the next
				}
				way := c.way
				m := benchtest.Open(t, "example.toml")
				m.W, m.Height = size[0], size[1]
				m.Cfg.Save = func(string, file.Document) error { return err }
				m.Cfg.Exists = nil
				m.Cfg.Print = func(string, *sheet.Sheet, bool) (string, error) { return "", err }
				benchtest.Press(m, "+")
				c.press(m)
				if !m.Trouble || !strings.HasPrefix(m.Says, "not ") {
					t.Fatalf("%v, %s: nothing failed: %q", size, way, m.Says)
				}
				text := unwrapped(benchtest.View(m))
				at, word := strings.Index(text, "? not "), reason
				if at < 0 || !strings.Contains(text[max(at, 0):], word) {
					t.Errorf("%v, %s: %q is not said:\n%s", size, way, reason, benchtest.View(m))
				}
				if g, _, any := desk.Worst(m.Sheet); any && m.Entry == nil && !strings.Contains(text, g.Where) {
					t.Errorf("%v, %s: the open point is hidden:\n%s", size, way, benchtest.View(m))
				}
			}
		}
	}
}
