package draw

import (
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestZoomed(t *testing.T) {
	s := rings(1, 6, 12, 18, 24, 30)
	z := Zoomed(s, "W22")
	if len(z.Discs)+len(z.OutOfView) != len(s.Discs) {
		t.Fatalf("%d in view and %d outside, of %d", len(z.Discs), len(z.OutOfView), len(s.Discs))
	}
	if got := float64(s.OverMM) / float64(z.View.D); math.Abs(got-ZoomFactor) > 1e-9 { // exact but for rounding
		t.Errorf("magnified %.3f, want %v", got, ZoomFactor)
	}
	if len(s.OutOfView) != 0 || len(s.Discs) != 91 {
		t.Error("the section given was changed")
	}

	// Three across: 2.2 would cut the neighbours, so they set the window.
	small := Zoomed(rings(1, 6, 12), "W1")
	if len(small.Discs) != 7 {
		t.Errorf("%d discs round the centre, want 7", len(small.Discs))
	}
	if got, want := float64(small.View.D), 3*1.09; math.Abs(got-want) > 1e-9 { // three diameters, exact but for rounding
		t.Errorf("window %.3f mm, want %.3f", got, want)
	}

	if d := cmp.Diff(s, Zoomed(s, "nobody")); d != "" {
		t.Errorf("an unknown id changed the section:\n%s", d)
	}
	c := Picture(z, 60, 24, Palette{})
	if len(c.NotShown) != 0 || len(c.OutOfView) != len(z.OutOfView) {
		t.Errorf("not shown %v, %d outside of %d", c.NotShown, len(c.OutOfView), len(z.OutOfView))
	}
}
