package heat

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"contralay/model/unit"
)

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if math.Abs(got-want) > tol {
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

// thirtySeven is 37 × 22 AWG of 1.09 mm laid 1-6-12-18 in a sheath of 0.70 mm wall;
// currents of centre and layers, in A.
func thirtySeven(k unit.Conductivity, ambient unit.Celsius, i [4]float64) Bundle {
	const ohmPerM = 16.20 * 3.28084 / 1000 // 16.20 Ω/1000 ft: AC 43.13-1B table 11-9
	b := Bundle{K: k, Ambient: ambient, SheathMM: 9.03}
	for n, count := range []float64{1, 6, 12, 18} {
		b.Shells = append(b.Shells, Shell{OuterMM: 1.09 * unit.Millimetre(2*n+1), At20: unit.WattPerMetre(count * i[n] * i[n] * ohmPerM)})
	}
	return b
}

// A worked table of this model, made apart from this code, on the radii as given:
// within 0.05 °C, and 0.1 % of the heat.
func TestWorkedBundle(t *testing.T) {
	for _, c := range []struct {
		name               string
		b                  Bundle
		heat               float64
		surface, bundle    float64
		c, one, two, three float64
	}{
		{"all at 2 A", thirtySeven(0.15, 25, [4]float64{2, 2, 2, 2}), 8.832, 46.80, 47.98, 52.80, 52.68, 51.84, 50.29},
		{"all at 2 A, better inside", thirtySeven(0.25, 25, [4]float64{2, 2, 2, 2}), 8.788, 46.71, 47.88, 50.76, 50.68, 50.19, 49.26},
		{"inner seven at 5 A", thirtySeven(0.15, 25, [4]float64{5, 5, 0, 0}), 11.074, 51.44, 52.93, 69.22, 68.38, 62.88, 56.88},
		{"inner seven at 5 A, better inside", thirtySeven(0.25, 25, [4]float64{5, 5, 0, 0}), 10.818, 50.92, 52.37, 61.92, 61.43, 58.21,
			54.69},
		{"outer eighteen at 3.118 A", thirtySeven(0.15, 25, [4]float64{0, 0, 0, 3.118}), 10.522, 50.31, 51.73, 53.39, 53.39, 53.39, 53.39},
		{"all at 2 A in 85 °C", thirtySeven(0.15, 85, [4]float64{2, 2, 2, 2}), 10.68, 105.63, 107.07, 112.90, 112.74, 111.74, 109.85},
	} {
		t.Run(c.name, func(t *testing.T) {
			r, ok := c.b.Solve(nil)
			if !ok {
				t.Fatal("no balance")
			}
			near(t, "heat", float64(r.Heat), c.heat, 0.001*c.heat)
			near(t, "surface", float64(r.Surface), c.surface, 0.05)
			near(t, "under the sheath", float64(r.Bundle), c.bundle, 0.05)
			for k, want := range []float64{c.c, c.one, c.two, c.three} {
				near(t, "shell", float64(r.Shells[k]), want, 0.05)
			}
		})
	}
	high := thirtySeven(0.15, 25, [4]float64{2, 2, 2, 2})
	high.Pressure = Pressure(60_000 * 304.8)
	r, _ := high.Solve(nil)
	near(t, "surface at 60,000 ft", float64(r.Surface), 57.99, 0.05)
	near(t, "centre at 60,000 ft", float64(r.Shells[0]), 64.24, 0.05)
}

// Loaded wires moved from the middle to the outside, the same squared current: about
// 16 °C off the hottest.
func TestOutwardIsCooler(t *testing.T) {
	in, _ := thirtySeven(0.15, 25, [4]float64{5, 5, 0, 0}).Solve(nil)
	out, _ := thirtySeven(0.15, 25, [4]float64{0, 0, 0, 3.118}).Solve(nil)
	near(t, "difference", float64(in.Shells[0]-out.Shells[3]), 16, 0.5)
}

// A uniform source in a cylinder is Q/(4πk) hotter on the axis than outside (closed
// form), however it is cut into shells.
func TestUniformSource(t *testing.T) {
	const k, q, d = 0.15, 5.0, 10.0
	for _, n := range []int{1, 2, 7, 40} {
		b := Bundle{K: k, Ambient: 20}
		last := 0.0
		for j := range n {
			r := d * float64(j+1) / float64(n)
			b.Shells = append(b.Shells, Shell{OuterMM: unit.Millimetre(r), At20: unit.WattPerMetre(q * (r*r - last*last) / (d * d))})
			last = r
		}
		r, _ := b.Solve(nil)
		// The resistance grows with the temperature of each shell, so the heat made is
		// what the result says; its share of each shell is uniform to 2 %.
		want := float64(r.Heat) / (4 * math.Pi * k)
		near(t, "axis over surface", float64(r.Shells[0]-r.Bundle), want, 0.02*want)
	}
}

// What goes in comes out: heat made at the temperatures given and heat taken by the
// air agree to 10⁻⁹ where the balance is carried on to 10⁻¹⁰ °C, and to what 10⁻⁴ °C
// are worth where it stops as it does in use.
func TestEnergyBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := someBundle(t)
		r, ok := b.solve(nil, 1e-10)
		if !ok {
			t.Skip("no steady state")
		}
		used, _ := b.Solve(nil)
		for k := range r.Shells {
			if math.Abs(float64(r.Shells[k]-used.Shells[k])) > 1e-3 {
				t.Errorf("shell %d: %v in use, %v carried on", k, used.Shells[k], r.Shells[k])
			}
		}
		d := max(b.Shells[len(b.Shells)-1].OuterMM, b.SheathMM)
		out := float64(Surface(d, r.Surface, b.Ambient, Emissivity, seaLevel))
		made := 0.0
		for k, s := range b.Shells {
			made += float64(s.At20) * (234.5 + float64(r.Shells[k])) / 254.5
		}
		if math.Abs(made-out) > 1e-9*math.Max(made, 1) {
			t.Errorf("%v W/m made, %v taken", made, out)
		}
	})
}

func someBundle(t *rapid.T) Bundle {
	b := Bundle{WireK: unit.Conductivity(rapid.Float64Range(0.3, 2).Draw(t, "k")),
		Fill:    unit.Ratio(rapid.Float64Range(0.4, 0.9).Draw(t, "fill")),
		Ambient: unit.Celsius(rapid.Float64Range(-50, 200).Draw(t, "ambient"))}
	d := 0.0
	for range rapid.IntRange(1, 6).Draw(t, "shells") {
		d += rapid.Float64Range(0.5, 8).Draw(t, "d")
		b.Shells = append(b.Shells, Shell{OuterMM: unit.Millimetre(d), At20: unit.WattPerMetre(rapid.Float64Range(0, 30).Draw(t, "q"))})
	}
	if rapid.Bool().Draw(t, "sheath") {
		b.SheathMM = unit.Millimetre(d * 1.2)
	}
	return b
}

// Nothing is colder than the air, more heat anywhere cools nothing, and a start from
// another result comes to the same.
func TestMoreIsNeverCooler(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := someBundle(t)
		r, ok := b.Solve(nil)
		if !ok {
			t.Skip("no steady state")
		}
		for _, v := range r.Shells {
			if v < b.Ambient-1e-3 || !unit.Finite(float64(v)) {
				t.Errorf("%v in air of %v", v, b.Ambient)
			}
		}
		more := b
		more.Shells = append([]Shell{}, b.Shells...)
		at := rapid.IntRange(0, len(b.Shells)-1).Draw(t, "where")
		more.Shells[at].At20 += 2
		m, ok := more.Solve(&r)
		if !ok {
			t.Skip("no steady state")
		}
		cold, _ := more.Solve(nil)
		for k := range r.Shells {
			if m.Shells[k] < r.Shells[k]-1e-3 {
				t.Errorf("shell %d cools from %v to %v", k, r.Shells[k], m.Shells[k])
			}
			if math.Abs(float64(m.Shells[k]-cold.Shells[k])) > 0.01 {
				t.Errorf("shell %d: %v from a warm start, %v from a cold one", k, m.Shells[k], cold.Shells[k])
			}
		}
	})
}

// Nonsense gives no number.
func TestNonsense(t *testing.T) {
	nan := unit.Millimetre(math.NaN())
	for _, b := range []Bundle{
		{}, {Shells: []Shell{{0, 1}}}, {Shells: []Shell{{nan, 1}}}, {Shells: []Shell{{5, 1}, {4, 1}}}, {Shells: []Shell{{5, -1}}},
		{Shells: []Shell{{5, unit.WattPerMetre(math.Inf(1))}}}, {Shells: []Shell{{5, 1}}, Ambient: unit.Celsius(math.NaN())},
		{Shells: []Shell{{1, 1e9}}, WireK: 1, Fill: 0.8},
	} {
		if r, ok := b.Solve(nil); ok {
			t.Errorf("%+v comes to %+v", b, r)
		}
	}
}
