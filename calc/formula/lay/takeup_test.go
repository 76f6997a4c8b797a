package lay_test

import (
	"math"
	"testing"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

// Take-up of 61 × 22 AWG over 2.00 m, pitch diameter of the outer layer 8.72 mm: 74 mm
// at 100 mm lay, 199 mm at 60 mm. Worked out by hand: 2000 (√(1 + (π 8.72/L)²) − 1).
func TestTakeUpOfSixtyOne(t *testing.T) {
	for l, want := range map[unit.Millimetre]float64{100: 74, 60: 199} {
		if got := 2000 * (float64(lay.TakeUp(8.72/2, l)) - 1); math.Abs(got-want) > 0.5 {
			t.Errorf("%v mm lay: %v mm, want %v", l, got, want)
		}
	}
}
