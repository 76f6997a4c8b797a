package shield

import (
	"math"
	"testing"

	"contralay/model/unit"
)

// Each body takes its own thickest cable and the next one takes what is thicker.
func TestSleeve(t *testing.T) {
	for _, c := range []struct {
		over unit.Millimetre
		size int
		ok   bool
	}{{0.4, 1, true}, {1.7, 1, true}, {1.71, 2, true}, {2.9, 3, true}, {4.5, 3, true}, {7, 5, true}, {7.01, 0, false}, {0, 0, false},
		{-1, 0, false}, {unit.Millimetre(math.NaN()), 0, false}, {unit.Millimetre(math.Inf(1)), 0, false}} {
		if size, ok := Sleeve(c.over); size != c.size || ok != c.ok {
			t.Errorf("over %v mm: size %d, %v; want %d, %v", c.over, size, ok, c.size, c.ok)
		}
	}
}
