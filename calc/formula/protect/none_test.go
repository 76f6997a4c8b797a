package protect

import (
	"math"
	"testing"

	"contralay/model/unit"
)

// A blade of 10 A opens within 0.1 s at 6 times its rating and within no less; within 0.5 s from 3.5 times on.
func TestOpensInTime(t *testing.T) {
	d := Device{Kind: Blade, Rating: 10}
	if i, ok := d.opensIn(0.05); ok || i != 0 {
		t.Errorf("within 0.05 s from %v A", i)
	}
	for within, want := range map[float64]float64{0.1: 60, 0.5: 35, 5: 20, 50: 16} {
		if i, ok := d.opensIn(unit.Second(within)); !ok || math.Abs(float64(i)-want) > 1e-6 {
			t.Errorf("within %v s from %v A, want %v", within, i, want)
		}
	}
}

// No fuse is made of a kind that there is not.
func TestRatingsOfNoKind(t *testing.T) {
	for _, k := range []Kind{-1, Electronic, Electronic + 1} {
		if got := Ratings(k); len(got) != 0 {
			t.Errorf("kind %d: %v", k, got)
		}
	}
	if got := Ratings(LargeBlade); len(got) != 7 || got[0] != 20 || got[6] != 80 {
		t.Errorf("%v", got)
	}
}
