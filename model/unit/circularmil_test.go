package unit

import (
	"math"
	"testing"
)

func TestCircularMils(t *testing.T) {
	// source: ASTM B33-04 table 1: 4/0 is 211 600 circular mils and 107.2193 mm²;
	// half of the last printed digit.
	if got := CircularMil(211600).SquareMM(); math.Abs(float64(got)-107.2193) > 5e-5 {
		t.Errorf("211600 circular mils = %.5f mm²", got)
	}
	if got := SquareMM(107.2193).CircularMils(); math.Abs(float64(got)-211600) > 0.1 {
		t.Errorf("107.2193 mm² = %.2f circular mils", got)
	}
}
