package bench_test

import (
	"testing"

	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/words"
)

// Every number that can be typed can be stepped with + -, and one step back is where
// it was.
func TestNumbersStep(t *testing.T) {
	for name, keys := range map[string][]string{"wire": {"enter"}, "duty": {"enter", "@duty", "enter"},
		"feed": {"@protection", "enter", "enter"}, "layer": {"to layers", "down", "enter"}, "sheath": {"to sheath"},
		"change": {"esc", "-"}, "breakout": {"esc", "down", "enter"}} {
		m := benchtest.OpenAt(t, words.Either(name == "feed" || name == "duty", "feeds.toml", "example.toml"), "wires")
		benchtest.GoTo(t, m, keys...)
		for at, r := range m.Page(m.ListWidth()).Rows {
			if r.Field == nil || !r.Field.Number || r.Key == "more" || r.Key == "leg" {
				continue
			}
			if r.Step == nil {
				t.Errorf("%s: %q can be typed and not stepped", name, r.Line())
				continue
			}
			m.Put(at, "")
			benchtest.Press(m, "+")
			if m.Trouble {
				t.Errorf("%s: %q: %s", name, r.Line(), m.Says)
			}
			up := m.Page(m.ListWidth()).Rows[at].Line()
			if up == r.Line() {
				t.Errorf("%s: + leaves %q (%s)", name, r.Line(), m.Says)
			}
			benchtest.Press(m, "backspace")
		}
	}
}
