package heat

import (
	"math"
	"testing"

	"contralay/model/unit"
)

// failing is a test, of this library or the other.
type failing interface {
	Helper()
	Errorf(format string, args ...any)
}

func near(t failing, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: %v, want %v within %v", what, got, want, tol)
	}
}

// Natural convection and radiation from a level cylinder of 0.1 m at 165 °C in air of
// 23 °C, emissivity 0.85: 763 W/m, a textbook example (Incropera 9.4, from memory);
// its air properties differ a little from ours, hence 1 %.
func TestTextbookCylinder(t *testing.T) {
	near(t, "W/m", float64(Surface(100, 165, 23, 0.85, seaLevel)), 763, 7.63)
	// A second published example, another correlation: 0.1 m, 170 / 30 °C, convection
	// alone 1419.8 W over 4 m. Correlations differ by 11 %.
	got := 4 * convection(0.1, 170+kelvin, 30+kelvin, seaLevel)
	near(t, "W over 4 m", got, 1419.8, 0.12*1419.8)
}

// Air at 300 K and one atmosphere: μ 1.846·10⁻⁵, k 0.0263, c 1007, ρ 1.16 in tables of
// heat transfer textbooks (from memory), and the pressures of the standard atmosphere.
func TestAir(t *testing.T) {
	a := airAt(300, seaLevel)
	near(t, "mu", a.mu*1e5, 1.846, 0.005)
	near(t, "k", a.k, 0.0263, 0.0002)
	near(t, "cp", a.cp, 1007, 4)
	near(t, "rho", a.rho, 1.177, 0.005)
	near(t, "20,000 ft", Pressure(20_000*304.8), 46_563, 10)
	near(t, "60,000 ft", Pressure(60_000*304.8), 7_172, 10)
}

// A single wire in free air comes within 6 % (normal wall) and 7 % (thin wall) of the
// published points, on the safe side. Source: 47 A for 14 AWG at a rise of 150 °C, AC
// 43.13-1B p. 11-27; 21.5 A and 16.2 A for 20 and 22 AWG at 140 °C, the same circular's
// example in 11-69, from memory. Resistances of tin copper: its table 11-9.
func TestAlone(t *testing.T) {
	for _, c := range []struct {
		name         string
		thin, normal unit.Millimetre // finished diameters
		conductor    unit.Millimetre
		ohm, ambient float64
		published    float64
	}{
		{"14 AWG", 2.16, 2.39, 1.71, 3.06, 50, 47},
		{"20 AWG", 1.27, 1.47, 0.97, 9.88, 60, 21.5},
		{"22 AWG", 1.09, 1.27, 0.76, 16.2, 60, 16.2},
	} {
		for _, w := range []struct {
			wall string
			d    unit.Millimetre
			most float64
		}{{"thin", c.thin, 0.07}, {"normal", c.normal, 0.06}} {
			got := float64(Alone(w.d, c.conductor, unit.OhmPerKilometre(c.ohm*3.28084), unit.Celsius(c.ambient), 200, seaLevel))
			if got > c.published || got < c.published*(1-w.most) {
				t.Errorf("%s, %s wall: %.1f A, published %.1f", c.name, w.wall, got, c.published)
			}
		}
	}
	if a := Alone(1.09, 0.76, 53, 150, 150, seaLevel); a != 0 {
		t.Errorf("air as warm as the rating: %v A", a)
	}
}
