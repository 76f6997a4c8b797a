package bench_test

import (
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/ui/bench"
	"contralay/ui/bench/words"
)

// Every digit is drawn in its own way, in plain characters, and all figures keep
// three lines of one width.
func TestLargeDigits(t *testing.T) {
	seen := map[string]rune{}
	for _, r := range "0123456789.-/ " {
		seg, ok := words.Segments(r)
		if !ok {
			t.Errorf("%q is not drawn", r)
		}
		for _, line := range seg {
			if len(line) != len(seg[0]) {
				t.Errorf("%q: lines of %d and %d", r, len(seg[0]), len(line))
			}
		}
		all := strings.Join(seg[:], "\n")
		if was, is := seen[all]; is {
			t.Errorf("%q looks like %q", r, was)
		}
		seen[all] = r
	}
	if got := strings.Join(words.Large("10.2", "mm"), "\n"); got != "      _     _  \n   | | |    _| \n   | |_| . |_   mm" {
		t.Errorf("10.2 is drawn\n%s", got)
	}
}

// What is typed stands large while it is typed, in mm and in fractions of an inch.
func TestTypedStandsLarge(t *testing.T) {
	for _, c := range []struct {
		keys []string
		want []string
	}{
		{[]string{"2", ".", "5"}, words.Large("2.5", "A  current of wire 101")},
		{[]string{"m", "right", "right", "right", "down", "down", "down", "down", "down", "enter", "1", " ", "3", "/", "8"},
			words.Large("1 3/8", "in  start of the sheath")},
	} {
		m := open(t, "example.toml")
		bench.Update(m, tea.WindowSizeMsg{Width: 80, Height: 24})
		press(m, c.keys...)
		v := bench.View(m)
		for _, l := range c.want {
			if !strings.Contains(v, strings.TrimRight(l, " ")) {
				t.Errorf("%q is not in\n%s", l, v)
			}
		}
	}
}
