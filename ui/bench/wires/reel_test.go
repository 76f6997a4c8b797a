package wires_test

import (
	"strings"
	"testing"

	"contralay/ui/bench/benchtest"
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
		m := benchtest.Open(t, "example.toml")
		benchtest.Press(m, "enter", "enter", c.typed, "enter")
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
