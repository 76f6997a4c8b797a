package label

import (
	"testing"

	"contralay/model/unit"
)

// Source of the sizes: a marker-tube specification; of the window: a tubing maker's
// guide, whose worked case is a 25.4 tube over 14.0 to 20.3 mm.
func TestFor(t *testing.T) {
	for over, want := range map[unit.Millimetre]unit.Millimetre{1.76: 3.2, 2.5: 3.2, 2.7: 4.8, 5: 6.4, 7.6: 9.5, 10.1: 12.7, 13.9: 19,
		14.0: 19, 15.3: 25.4, 20.3: 25.4, 25: 38} {
		if s, ok := For(over); !ok || s.SuppliedMM != want {
			t.Errorf("over %v: %+v %v, want %v", over, s, ok, want)
		}
	}
	for _, over := range []unit.Millimetre{0, 1.7, 33, -1} {
		if s, ok := For(over); ok {
			t.Errorf("over %v: %+v", over, s)
		}
	}
	// Nothing is left out between the thinnest and the thickest.
	for v := unit.Millimetre(1.76); v <= 30.4; v += 0.01 {
		if _, ok := For(v); !ok {
			t.Fatalf("nothing holds %v", v)
		}
	}
}
