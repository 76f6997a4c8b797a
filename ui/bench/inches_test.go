package bench_test

import (
	"regexp"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
)

// millimetres is a length in mm on a screen.
var millimetres = regexp.MustCompile(`\d mm\b`)

// No screen in inches shows a length in mm.
func TestInchesOnEveryScreen(t *testing.T) {
	shorttest.Turn(t)
	benchtest.EachOrSome(t, func(t *testing.T, screen string) {
		for k, name := range []string{"example.toml", "demo.toml", "whole.toml"} {
			if !benchtest.Turn(screen, k, []int{1, 4, 8}[k]) || name == "whole.toml" && !shorttest.Long() {
				continue // the large ones on some screens, the largest in the long form
			}
			c := benchtest.Config(t, name)
			c.Doc.Harness.Head.Units = model.Some("in")
			m, lacks := benchtest.ReachWith(t, name, screen, c)
			press := func(m *desk.Model, key string) {
				benchtest.Update(m, benchtest.Message(key))
				clear(m.Pending) // a large one is laid anew by no key: its answer is there at once
			}
			if name == "example.toml" || shorttest.Long() {
				press = func(m *desk.Model, key string) { benchtest.Press(m, key) }
			}
			if m.Sys != unit.Inch || lacks != "" && name != "whole.toml" {
				t.Fatalf("%s does not open in inches, or lacks %q", name, lacks)
			}
			for i, key := range []string{"+", "-", ".", "enter", "9", "enter"} { // what the answers say
				if !benchtest.Turn(screen, i/2, 3) {
					continue
				}
				if press(m, key); millimetres.MatchString(m.Says) {
					t.Errorf("%s, %s, key %s: %q", name, screen, key, m.Says)
				}
			}
			for i, size := range [][2]int{{80, 24}, {120, 40}, {40, 12}} {
				if !benchtest.Turn(screen, i+k, 3) {
					continue
				}
				benchtest.Size(m, size[0], size[1])
				p := m.Page(m.ListWidth())
				lines := append(strings.Split(benchtest.View(m), "\n"), p.Lines...)
				for _, r := range p.Rows {
					lines = append(lines, r.Line(), r.Detail, r.BigSays)
				}
				for _, line := range lines {
					if millimetres.MatchString(line) && !strings.Contains(line, "lengths without a unit") {
						t.Errorf("%s, %s at %v: %q", name, screen, size, line)
					}
				}
			}
		}
	})
}
