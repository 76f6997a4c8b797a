package heat

import (
	"math"
	"testing"

	"contralay/model/unit"
)

// TestPressureOfTheAtmosphere by the barometric formula of its definition, worked by hand from 101,325 Pa, 288.15 K, 6.5 K less
// each km to 11 km and 216.65 K above, g 9.80665 m/s², 28.9644 g/mol, R 8.31432 (US Standard Atmosphere 1976, as remembered).
func TestPressureOfTheAtmosphere(t *testing.T) {
	for km, want := range map[unit.Millimetre]float64{0: 101_325, 1: 89_874.6, 5: 54_019.9, 10: 26_436.2, 11: 22_632, 12: 19_330.4,
		15: 12_044.6, 20: 5474.9} {
		if got := Pressure(km * 1e6); math.Abs(got/want-1) > 1e-3 {
			t.Errorf("%v km: %.0f Pa, want %.0f", km, got, want)
		}
	}
}
