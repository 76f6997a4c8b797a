package lay

import (
	"math"
	"testing"

	"contralay/model/unit"
)

// By hand: two discs of radius 2, 6 apart, and one of radius 3 that touches both make two triangles of 3, 4 and 5. None touches
// both where they lie too far apart, where one is deep in the other, or where they are the same.
func TestBetweenTwoDiscs(t *testing.T) {
	got := between(disc{0, 0, 2}, disc{6, 0, 2}, 3)
	if len(got) != 2 {
		t.Fatalf("%v", got)
	}
	for k, y := range []float64{4, -4} {
		if p := got[k]; math.Abs(p.x-3) > 1e-12 || math.Abs(p.y-y) > 1e-12 || p.r != 3 {
			t.Errorf("%v, by hand (3, %v)", p, y)
		}
	}
	if got := between(disc{0, 0, 2}, disc{10, 0, 2}, 3); len(got) != 2 || got[0].x != 5 || got[0].y != 0 || got[1] != got[0] {
		t.Errorf("just in line: %v", got)
	}
	for _, b := range []disc{{10.001, 0, 2}, {0, 0, 2}} {
		if got := between(disc{0, 0, 2}, b, 3); got != nil {
			t.Errorf("%v: %v", b, got)
		}
	}
	if got := between(disc{0, 0, 5}, disc{1, 0, 1}, 1); got != nil {
		t.Errorf("deep inside: %v", got)
	}
}

// At a radius of L/2π the wire goes once round as it goes along: 45°, and √2 times the length; however short the lay. A lay of none
// is straight.
func TestShortLay(t *testing.T) {
	for _, lay := range []float64{0.25, 1, 40} {
		r := lay / (2 * math.Pi)
		if k := float64(TakeUp(unit.Millimetre(r), unit.Millimetre(lay))); math.Abs(k-math.Sqrt2) > 1e-12 {
			t.Errorf("lay %v: %v", lay, k)
		}
		if a := float64(LayAngle(unit.Millimetre(r), unit.Millimetre(lay))); math.Abs(a-45) > 1e-9 {
			t.Errorf("lay %v: %v°", lay, a)
		}
	}
	for _, none := range []float64{0, -1} {
		if k, a := TakeUp(3, unit.Millimetre(none)), LayAngle(3, unit.Millimetre(none)); k != 1 || a != 0 {
			t.Errorf("lay %v: %v, %v°", none, k, a)
		}
	}
}
