package value

import "testing"

// A dash that fills one of two cells is no part of a name.
func TestJoinSaid(t *testing.T) {
	for _, c := range [][3]string{
		{"Valve", "up", "Valve; up"},
		{"-", "Screen drain", "Screen drain"},
		{"DN", "–", "DN"},
		{"-", "—", "-"},
		{"", "up", "up"},
		{"+12V", "-5V", "+12V; -5V"},
	} {
		if got := JoinSaid("; ", c[0], c[1]); got != c[2] {
			t.Errorf("%q and %q: %q, want %q", c[0], c[1], got, c[2])
		}
	}
}
