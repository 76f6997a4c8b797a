package outline

import "testing"

// Of two the one gets its part, and all where neither asks for any.
func TestShareOfTwo(t *testing.T) {
	for _, c := range [][3]float64{{0, 0, 1}, {2, 2, 0.5}, {1, 3, 0.25}, {3, 1, 0.75}, {0, 2, 0}, {2, 0, 1}} {
		if got := share(c[0], c[1]); got != c[2] {
			t.Errorf("%v: %v", c, got)
		}
	}
}
