package face

import (
	"testing"

	"contralay/ui/paper/plot"
)

// Where a boot points an arrow is drawn, from beyond the rim outward: a line and a head, at three o'clock to the right.
func TestBootArrow(t *testing.T) {
	s := &plot.Sheet{}
	boot(s, 20, 3)
	lines, heads := 0, 0
	for _, x := range s.Shapes {
		switch {
		case len(x.Way) == 2 && !x.Closed:
			lines++
			if a, b := x.Way[0], x.Way[1]; !(a.X > 20 && b.X > a.X) || a.Y > 1e-9 || a.Y < -1e-9 {
				t.Errorf("from %v to %v", a, b)
			}
		case len(x.Way) == 3 && x.Closed:
			heads++
		}
	}
	if lines != 1 || heads != 1 {
		t.Errorf("%d lines, %d heads of %d shapes", lines, heads, len(s.Shapes))
	}
}
