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

// Every sleeve is a 2:1 size: it recovers to half of what it is supplied at, to the tenth. At the edges of a window by hand: 3.2 is
// filled to four fifths by 2.56 mm, 4.8 grips from 1.1 × 2.4 = 2.64 mm, 9.5 from 5.28; between the windows of 6.4 (to 5.12) and
// 9.5 (from 5.28) the
// smaller one is filled further, as that of 12.7 (to 10.16) before 19 (from 10.45). The largest is filled to 0.85 × 38 = 32.3.
func TestEdgesOfTheWindows(t *testing.T) {
	for _, s := range sleeves {
		if r := s.SuppliedMM/2 - s.RecoveredMM; r < -0.051 || r > 0.051 {
			t.Errorf("%+v", s)
		}
	}
	for over, want := range map[unit.Millimetre]unit.Millimetre{1.76: 3.2, 2.56: 3.2, 2.57: 3.2, 2.64: 4.8, 5.12: 6.4, 5.2: 6.4,
		5.28: 9.5, 7.6: 9.5,
		7.61: 12.7, 10.16: 12.7, 10.4: 12.7, 10.45: 19, 30.4: 38, 32.3: 38} {
		if s, ok := For(over); !ok || s.SuppliedMM != want {
			t.Errorf("over %v: %+v, want %v", over, s, want)
		}
	}
	for _, over := range []unit.Millimetre{1.75, 32.31} {
		if s, ok := For(over); ok || s != (Sleeve{}) {
			t.Errorf("over %v: %+v", over, s)
		}
	}
	if OffLeast != 25 || OffMost != 50 { // 1 in and 2 in, as fitters measure it
		t.Errorf("a label sits %v to %v mm off", OffLeast, OffMost)
	}
}
