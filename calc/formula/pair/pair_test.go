package pair

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"contralay/model/unit"
)

// A table worked apart from this code, of Lefferson's formula for hard film, lay 12 × 2D
// (22 /11: soft PTFE); to the half ohm it is printed to.
func TestImpedance(t *testing.T) {
	for _, c := range []struct {
		name       string
		over, d    unit.Millimetre
		insulation string
		ohm        float64
	}{
		{"24 /32", 0.94, 0.60, "cross-linked ETFE, light wall", 102}, {"22 /32", 1.09, 0.77, "cross-linked ETFE, light wall", 89},
		{"20 /32", 1.27, 0.965, "cross-linked ETFE, light wall", 78},
		{"22 /34", 1.27, 0.77, "cross-linked ETFE, normal wall", 109}, {"22 /16", 1.32, 0.77, "ETFE", 113},
		{"24 /16", 1.14, 0.60, "ETFE", 126}, {"22 /11", 1.245, 0.77, "PTFE", 110},
	} {
		er, soft, ok := Permittivity(c.insulation)
		if !ok {
			t.Fatalf("%s: no permittivity", c.name)
		}
		z, theta, ok := Impedance(c.over, c.d, 24*c.over, er, soft)
		if !ok || math.Abs(float64(z)-c.ohm) > 0.8 {
			t.Errorf("%s: %.2f ohm, want %v", c.name, float64(z), c.ohm)
		}
		if theta >= FittedFrom {
			t.Errorf("%s: %v degrees: a harness twists less than the formula was fitted to", c.name, theta)
		}
		// The twist hardly matters at a harness's lay: under 3 % from 8 to 16 × 2D, 4 %
		// for soft insulation, whose factor of θ² is two and a half times as large.
		most := map[bool]float64{false: 0.03, true: 0.04}[soft]
		tight, _, _ := Impedance(c.over, c.d, 16*c.over, er, soft)
		loose, _, _ := Impedance(c.over, c.d, 32*c.over, er, soft)
		if r := float64(loose/tight) - 1; r < 0 || r > most {
			t.Errorf("%s: %.3f from tight to loose", c.name, r)
		}
	}
}

// Two parallel round wires in air, the textbook form 120 · acosh(D/d): the limit of no
// insulation. And Johnson and Graham's 120/√εr · ln(2D/d), p. 186, overstates it by 17 %
// where D/d is 1.42.
func TestLimits(t *testing.T) {
	z, _, ok := Impedance(10, 2, 0, 1, false)
	if want := 119.9 * math.Acosh(5); !ok || math.Abs(float64(z)-want) > 1e-9 {
		t.Errorf("%v, want %v", z, want)
	}
	z, _, ok = Impedance(1.42, 1, 0, 1, false)
	if r := 120*math.Log(2*1.42)/float64(z) - 1; !ok || math.Abs(r-0.17) > 0.01 {
		t.Errorf("%v ohm: ln overstates it by %v", z, r)
	}
	for _, c := range [][3]unit.Millimetre{{1, 1, 10}, {1, 0, 10}, {0, 1, 1}, {1, 0.5, -1}, {unit.Millimetre(math.NaN()), 1, 1},
		{unit.Millimetre(math.Inf(1)), 1, 1}} {
		if z, _, ok := Impedance(c[0], c[1], c[2], 2.6, false); ok {
			t.Errorf("%v: %v", c, z)
		}
	}
	if _, _, ok := Permittivity("silicone"); ok {
		t.Error("silicone has no value here")
	}
}

// Source: the manual of a maker of engine controllers; between two rates the faster
// one's lengths hold.
func TestLengths(t *testing.T) {
	for _, c := range []struct {
		rate unit.KilobitPerSec
		bus  unit.Millimetre
		ok   bool
	}{{1000, 25_000, true}, {900, 25_000, true}, {500, 100_000, true}, {400, 100_000, true}, {50, 1_000_000, true}, {10, 1_000_000, true},
		{0, 0, false}, {2000, 0, false}} {
		if l, ok := At(c.rate); ok != c.ok || l.Bus != c.bus {
			t.Errorf("%v: %+v %v", c.rate, l, ok)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		a := unit.KilobitPerSec(rapid.Float64Range(0.1, 1000).Draw(t, "a"))
		b := unit.KilobitPerSec(rapid.Float64Range(float64(a), 1000).Draw(t, "b"))
		slow, _ := At(a)
		fast, ok := At(b)
		if !ok || fast.Bus > slow.Bus || fast.Stub > slow.Stub || fast.Stub > fast.Stubs {
			t.Errorf("%v: %+v, %v: %+v", a, slow, b, fast)
		}
	})
}

// The maker allows five stubs of the longest at each rate. A rate a twentieth above one of the table has the lengths of the next
// faster one, and one at it its own.
func TestLengthsBetweenRates(t *testing.T) {
	for _, rate := range []unit.KilobitPerSec{1000, 800, 500, 250, 125, 50} {
		own, ok := At(rate)
		if !ok || own.Rate != rate || own.Stubs != 5*own.Stub {
			t.Errorf("%v: %+v", rate, own)
		}
		if above, ok := At(rate * 1.05); ok != (rate < 1000) || ok && (above.Rate <= rate || above.Bus >= own.Bus) {
			t.Errorf("%v: %+v", rate*1.05, above)
		}
	}
	if l, ok := At(0.5); !ok || l.Rate != 50 {
		t.Errorf("half a kilobit: %+v", l)
	}
	for _, no := range []unit.KilobitPerSec{0, -5, unit.KilobitPerSec(math.NaN())} {
		if l, ok := At(no); ok || l != (Lengths{}) {
			t.Errorf("%v: %+v", no, l)
		}
	}
}

// Impedance by its formula, worked out apart: D/d = 2, so acosh is ln(2 + √3) = 1.3169579; εr = 2, so εe is 1.25 and a share of θ².
// A lay of π × D is a twist of 45° (θ² = 2025), one of √3 × π × D one of 30° (900).
func TestImpedanceByTheTwist(t *testing.T) {
	const acosh = 1.3169578969
	for _, c := range []struct {
		name string
		lay  float64
		soft bool
		e    float64
		deg  float64
	}{
		{"not twisted", 0, false, 1.25, 0}, {"soft, not twisted", 0, true, 1.25, 0},
		{"45°: 1.25 + 0.81", 2 * math.Pi, false, 2.06, 45}, {"soft, 45°: 1.25 + 2.025", 2 * math.Pi, true, 3.275, 45},
		{"30°: 1.25 + 0.36", 2 * math.Pi * math.Sqrt(3), false, 1.61, 30},
		{"soft, 30°: 1.25 + 0.9", 2 * math.Pi * math.Sqrt(3), true, 2.15, 30},
		{"a lay of 0.01 × π × D: 89.427°", 0.02 * math.Pi, false, 1.25 + 0.0004*89.4270613*89.4270613, 89.4270613},
	} {
		z, deg, ok := Impedance(2, 1, unit.Millimetre(c.lay), 2, c.soft)
		if want := 119.9 / math.Sqrt(c.e) * acosh; !ok || math.Abs(float64(z)-want) > 1e-5 || math.Abs(float64(deg)-c.deg) > 1e-6 {
			t.Errorf("%s: %v Ω at %v°, want %v at %v", c.name, z, deg, want, c.deg)
		}
	}
	// What is refused comes with nothing.
	for _, c := range [][4]float64{{1, 1, 10, 2}, {1, 0, 10, 2}, {1, -1, 10, 2}, {1, 2, 10, 2}, {2, 1, 10, 0.99}, {2, 1, -1, 2}} {
		z, deg, ok := Impedance(unit.Millimetre(c[0]), unit.Millimetre(c[1]), unit.Millimetre(c[2]), unit.Ratio(c[3]), false)
		if ok || z != 0 || deg != 0 {
			t.Errorf("%v: %v Ω, %v°", c, z, deg)
		}
	}
	for name, soft := range map[string]bool{"ETFE": false, "PTFE": true, "polyethylene": false, "silicone": false, "": false} {
		er, is, ok := Permittivity(name)
		if is != soft || ok != (er > 1) || !ok && er != 0 {
			t.Errorf("%q: %v, soft %v, %v", name, er, is, ok)
		}
	}
	if FittedFrom != 20 || FittedTo != 45 { // Lefferson 1971, as quoted
		t.Errorf("fitted from %v to %v degrees", FittedFrom, FittedTo)
	}
}
