package heat

import (
	"math"
	"testing"

	"contralay/model/unit"
)

// A wire of d = e·d_c that makes 2π·k W/m is one degree above its surface; what is no wire has no rise.
func TestRiseOfOneWire(t *testing.T) {
	q := unit.WattPerMetre(2 * math.Pi * float64(InsulationK))
	near(t, "rise", float64(Rise(q, math.E, 1)), 1, 1e-12)
	near(t, "rise of a wire twice as thick", float64(Rise(q, 2*math.E, 2)), 1, 1e-12)
	for _, c := range []struct {
		q            unit.WattPerMetre
		d, conductor unit.Millimetre
	}{{q, 1, 0}, {q, 1, -1}, {q, 1, 1}, {q, 1, 2}, {q, unit.Millimetre(math.NaN()), 1}, {unit.WattPerMetre(math.Inf(1)), 2, 1},
		{unit.WattPerMetre(math.NaN()), 2, 1}} {
		if got := Rise(c.q, c.d, c.conductor); got != 0 {
			t.Errorf("%+v: %v", c, got)
		}
	}
}

// Air takes nothing from what is no warmer than it.
func TestNoConvectionFromTheCold(t *testing.T) {
	for _, surface := range []float64{300, 299, 200} {
		if got := convection(0.01, surface, 300, seaLevel); got != 0 {
			t.Errorf("%v K in air of 300 K: %v", surface, got)
		}
	}
	if got := convection(0.01, 301, 300, seaLevel); !(got > 0) {
		t.Errorf("one degree above: %v", got)
	}
}

// Where the search begins does not matter: what leaves a cylinder at 350 K in air of 300 K holds it there, whether one begins
// near it, at the air, below, far above or nowhere; and where no step is small enough all of them are taken.
func TestBalanceFromAnywhere(t *testing.T) {
	q := convection(0.01, 350, 300, seaLevel) + radiation(0.01, 350, 300, float64(Emissivity))
	for _, start := range []float64{349, 300, 250, 4300, 1e6, 0, math.NaN(), math.Inf(1)} {
		near(t, "surface", balance(0.01, 300, seaLevel, q, start, 1e-9), 350, 1e-6)
	}
	near(t, "without an end", balance(0.01, 300, seaLevel, q, 340, 0), 350, 1e-9)
	for _, none := range []float64{0, -1} {
		if got := balance(0.01, 300, seaLevel, none, 350, 1e-9); got != 300 {
			t.Errorf("%v W/m: %v", none, got)
		}
	}
}
