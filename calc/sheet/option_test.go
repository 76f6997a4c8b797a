package sheet

import "testing"

// The answer at once has letters for eight at most; what a longer search finds goes on after those, whatever was found at once.
func TestLetter(t *testing.T) {
	for _, c := range []struct {
		shown, k int
		want     rune
	}{{3, 0, 'A'}, {3, 2, 'C'}, {3, 3, 'D'}, {3, 4, 'E'}, {12, 0, 'A'}, {12, 7, 'H'}, {12, 12, 'I'}, {12, 13, 'J'}} {
		if got := (Proposal{Shown: c.shown}).Letter(c.k); got != c.want {
			t.Errorf("%d of an answer of %d: %c, want %c", c.k, c.shown, got, c.want)
		}
	}
}
