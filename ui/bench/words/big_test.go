package words

import (
	"strings"
	"testing"
)

// Every digit is drawn in its own way, in plain characters, and all figures keep
// three lines of one width.
func TestLargeDigits(t *testing.T) {
	seen := map[string]rune{}
	for _, r := range "0123456789.-/ " {
		seg, ok := segments(r)
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
	if got := strings.Join(Large("10.2", "mm"), "\n"); got != "      _     _  \n   | | |    _| \n   | |_| . |_   mm" {
		t.Errorf("10.2 is drawn\n%s", got)
	}
}
