package toldpairs

import (
	"slices"
	"strings"
	"testing"
)

// A sentence twists wires together where it says so of them alone, and of each of them.
func TestWiresOfASentence(t *testing.T) {
	known := []string{"W4", "W5", "W6", "W7", "8", "9", "CAN H", "CAN L"}
	for _, c := range []struct{ says, want string }{
		{"W4 and W5 are one twisted pair, 120 ohm at both ends", "W4,W5"},
		{"Twist CAN H with CAN L, 40 turns per metre", "CAN H,CAN L"},
		{"W4/W5: twisted", "W4,W5"},
		{"W4/5 twisted", "W4,W5"},
		{"Twisted pair: W4 + W5", "W4,W5"},
		{"W4, W5 and W6 are twisted together", "W4,W5,W6"},
		{"wires 8 and 9 are twisted", "8,9"},
		{"W4 und W5 sind verdrillt", "W4,W5"},
		{"W4 et W5 sont torsadés ensemble", "W4,W5"},
		{"W4 y W5 forman un par trenzado", "W4,W5"},
		{"W4 e W5 em par trançado.", "W4,W5"},
		{"W4 e W5 não são par trançado", ""},
		{"W4 and W5 are not twisted", ""},
		{"W4 and W5 should be twisted", ""},
		{"W4 and W5 run beside the twisted pair W6 and W7", ""},
		{"W4 to W7 are twisted", ""},
		{"W4, W5, W6 and W7 are twisted pairs", ""},
		{"8 pairs, twisted, and 9 others", ""},
		{"W4 is twisted", ""},
		{"W4 and W5 are red", ""},
	} {
		got := wiresOf(c.says, func(called string) bool { return slices.Contains(known, called) })
		if s := strings.Join(got, ","); s != c.want {
			t.Errorf("%q: %q, want %q", c.says, s, c.want)
		}
	}
}
