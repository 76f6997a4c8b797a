package heattest

import (
	"errors"
	"fmt"
	"math"
	"testing"
)

// held is the temperatures of the conductors over the air where everything is held: the
// heats in W/m, air in the gaps, insulation and sheath in W/(m K), the surface in W/(m² K).
func held(t *testing.T, wires []circle, heats []float64, inner, outer, cell, air, insul, sheath, h float64) []float64 {
	t.Helper()
	g := newGrid(wires, inner, outer, cell, insul, sheath)
	s := newSystem(g)
	s.fill(g, air, h, 0)
	for w, q := range heats {
		s.right[g.cells+w] += q
	}
	x := make([]float64, len(s.right))
	if err := s.solve(x); err != nil {
		t.Fatal(err)
	}
	return x[g.cells:]
}

func within(t *testing.T, what string, got, want, share float64) {
	t.Helper()
	if !(math.Abs(got-want) <= share*math.Abs(want)) {
		t.Errorf("%s: %.4f, want %.4f within %.1f %% (%+.2f %%)", what, got, want, 100*share, 100*(got/want-1))
	}
}

// One wire in the middle of its sheath is cylinders in series, the closed form of any
// textbook: q/2π times Σ ln(b/a)/k and 1/(h r). The drop at the surface is taken off, so
// that it hides nothing of what is inside.
func TestConcentric(t *testing.T) {
	const insul, air, sheath, h, q = 0.24, 0.031, 0.2, 14.0, 5.0
	for _, c := range []struct{ rc, r, inner, outer float64 }{
		{0.381, 0.545, 0.545, 1.175}, // 22 AWG, tight
		{0.381, 0.545, 1.0, 1.6},
		{0.2415, 0.405, 0.43, 0.97}, // a gap of a third of a cell
		{1.0985, 1.31, 2, 3},
	} {
		inside := q / (2 * math.Pi) * (math.Log(c.r/c.rc)/insul + math.Log(c.inner/c.r)/air + math.Log(c.outer/c.inner)/sheath)
		surface := q / (2 * math.Pi) * 1000 / (h * c.outer)
		for cell, share := range map[float64]float64{0.08: 0.008, 0.04: 0.004} {
			got := held(t, []circle{{0, 0, c.r, c.rc}}, []float64{q}, c.inner, c.outer, cell, air, insul, sheath, h)[0]
			within(t, fmt.Sprintf("%v at %v mm", c, cell), got-surface, inside, share)
		}
	}
}

// A bare conductor off the axis of a cylinder of one material that is cold outside has the
// shape factor 2π / arcosh((D² + d² − 4e²) / (2 D d)) of any handbook of heat transfer. The
// cylinder is the inside of a sheath that conducts without end.
func TestEccentric(t *testing.T) {
	const k, q = 0.2, 5.0
	for _, c := range []struct{ d, x, y, inner, outer float64 }{
		{0.762, 0.5, 0.3, 1, 1.5}, {0.762, 0.9, 0, 1.4, 1.5}, {2.2, -0.31, 1.1, 2.4, 3}, {0.483, 1, -2.0, 2.7, 3},
	} {
		e, wide := math.Hypot(c.x, c.y), 2*c.inner
		want := q * math.Acosh((wide*wide+c.d*c.d-4*e*e)/(2*wide*c.d)) / (2 * math.Pi * k)
		for cell, share := range map[float64]float64{0.08: 0.008, 0.04: 0.004} {
			got := held(t, []circle{{c.x, c.y, c.d / 2, c.d / 2}}, []float64{q}, c.inner, c.outer, cell, k, k, 1e4, 1e7)[0]
			within(t, fmt.Sprintf("%v at %v mm", c, cell), got, want, share)
		}
	}
}

// What one wire's heat does to another is what the other's does to it: the equations are
// symmetric, and each temperature is a sum over the heats.
func TestReciprocal(t *testing.T) {
	wires := []circle{{-1, 0.2, 0.545, 0.381}, {0.6, -0.7, 0.865, 0.6795}, {0.3, 1.1, 0.405, 0.2415}}
	var of [3][]float64
	for w := range wires {
		q := make([]float64, 3)
		q[w] = 1
		of[w] = held(t, wires, q, 1.7, 2.3, 0.08, 0.03, kInsul, kSheath, 14)
	}
	for a := range wires {
		for b := range a {
			within(t, fmt.Sprint(a, " on ", b), of[a][b], of[b][a], 1e-6)
		}
	}
	all := held(t, wires, []float64{3, 0, 2}, 1.7, 2.3, 0.08, 0.03, kInsul, kSheath, 14)
	within(t, "sum", all[1], 3*of[0][1]+2*of[2][1], 1e-6)
}

// A level cylinder of 0.1 m and emissivity 0.85 at 165 °C in air of 23 °C loses 763 W/m, a
// textbook example (Incropera 9.4, from memory); a twentieth more is radiated with 0.9.
func TestFilm(t *testing.T) {
	const s, a = 165 + 273.15, 23 + 273.15
	want := 763/(math.Pi*0.1*(s-a)) + 0.05*5.67e-8*(s*s*s*s-a*a*a*a)/(s-a)
	within(t, "W/(m² K)", film(100, 165, 23), want, 0.01)
	// Between the rows of the table: Sutherland's laws of air (US Standard Atmosphere 1976, from
	// memory) give 31.5·10⁻³ W/(m K) and 22.7·10⁻⁶ m²/s at 370 K.
	nu, k, _ := airAt(370 - kelvin)
	within(t, "k", k, 31.5e-3, 0.01)
	within(t, "nu", nu, 23.1e-6, 0.01)
}

// One wire in its sheath, all of it in balance, by hand: the closed form with the heat of
// the temperature it gives, turned over until it stands.
func TestOneWireInBalance(t *testing.T) {
	c := Case{Wires: []Wire{{Over: 1.09, Conductor: 0.762, OhmPerKm: 53.15, Amps: 14}}, SheathInner: 1.3, SheathWall: 0.5, Air: 60}
	hot, surface := 100.0, 90.0
	for range 200 {
		q := 14 * 14 * 53.15e-3 * (1 + 0.00393*(hot-20))
		_, air, _ := airAt((hot + surface) / 2)
		surface = 60 + q/(film(2.3, surface, 60)*math.Pi*2.3e-3)
		hot = surface + q/(2*math.Pi)*(math.Log(1.09/0.762)/0.24+math.Log(1.3/1.09)/air+math.Log(2.3/1.3)/0.2)
	}
	got, err := c.Solve(0.04)
	if err != nil {
		t.Fatal(err)
	}
	within(t, "conductor over air", float64(got.Hottest())-60, hot-60, 0.002)
	within(t, "surface over air", float64(got.Surface)-60, surface-60, 0.002)
	c.Wires[0].Amps = 60
	if got, err := c.Solve(0.08); !errors.Is(err, errNoBalance) {
		t.Errorf("60 A in a 22 AWG: %v, %v; there is no steady state", got, err)
	}
}
