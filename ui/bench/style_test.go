package bench_test

import (
	"strings"
	"testing"

	"contralay/ui/bench/benchtest"
	"contralay/ui/draw"
)

// Plain characters and colour go together: every screen in ASCII keeps its codes,
// and between them stand plain bytes only.
func TestASCIIKeepsColour(t *testing.T) {
	for name, keys := range benchtest.EveryScreen {
		m := benchtest.Open(t, "example.toml")
		m.ShownOn(draw.Palette{Colour: true, Dark: true}, true)
		benchtest.Press(m, keys...)
		benchtest.Size(m, 80, 24)
		v := benchtest.View(m)
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
