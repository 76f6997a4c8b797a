package bench_test

import (
	"strings"
	"testing"

	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/words"
)

// What is typed stands large while it is typed, in mm and in fractions of an inch.
func TestTypedStandsLarge(t *testing.T) {
	for _, c := range []struct {
		keys []string
		want []string
	}{
		{[]string{"2", ".", "5"}, words.Large("2.5", "A  current of wire 101")},
		{[]string{"m", "to sheath", "down", "down", "down", "down", "down", "enter", "1", " ", "3", "/", "8"},
			words.Large("1 3/8", "in  start of the sheath")},
	} {
		m := benchtest.Open(t, "example.toml")
		benchtest.Size(m, 80, 24)
		benchtest.GoTo(t, m, c.keys...)
		v := benchtest.View(m)
		for _, l := range c.want {
			if !strings.Contains(v, strings.TrimRight(l, " ")) {
				t.Errorf("%q is not in\n%s", l, v)
			}
		}
	}
}
