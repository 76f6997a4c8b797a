package lay

import (
	"fmt"
	"math"
	"testing"

	"contralay/model/unit"
)

// bentLength is the length of a helical wire on an axis bent to radius rho, from
// phase 0 = phi, by Simpson's rule: dl = √((1 + (r/ρ)cos φ)² + tan²λ) ds.
func bentLength(r, rho, L, S, phi float64) float64 {
	const n = 2000
	tan := 2 * math.Pi * r / L
	f := func(s float64) float64 {
		c := 1 + r/rho*math.Cos(2*math.Pi*s/L+phi)
		return math.Sqrt(c*c + tan*tan)
	}
	sum := f(0) + f(S)
	for i := 1; i < n; i++ {
		sum += f(S*float64(i)/n) * float64(2+2*(i%2))
	}
	return sum * S / n / 3
}

// spread is the longest less the shortest over 72 phases.
func spread(r, rho, L, S float64) float64 {
	lo, hi := math.Inf(1), 0.0
	for k := range 72 {
		l := bentLength(r, rho, L, S, 2*math.Pi*float64(k)/72)
		lo, hi = math.Min(lo, l), math.Max(hi, l)
	}
	return hi - lo
}

func TestMismatch(t *testing.T) {
	// Source: the helix on a bent axis by quadrature, and the formula; printed to
	// 1e-4 mm. The formula is first order in r/ρ: it is up to 2e-4 mm above.
	for _, c := range []struct{ r, rho, L, lays, numeric, formula, straight float64 }{
		{3, 60, 72, 0.25, 1.5676, 1.5677, 1.8000}, {3, 60, 72, 0.5, 2.2170, 2.2171, 3.6000},
		{3, 60, 72, 0.75, 1.5676, 1.5677, 5.4000}, {3, 60, 72, 1, 0, 0, 7.2000},
		{3, 60, 72, 1.5, 2.2170, 2.2171, 10.8000}, {3, 60, 72, 2.5, 2.2170, 2.2171, 18.0000},
		{4.5, 100, 120, 0.5, 3.3460, 3.3461, 5.4000}, {2, 30, 36, 1.5, 1.4423, 1.4425, 7.2000},
	} {
		t.Run(fmt.Sprintf("r %g ρ %g, %g lays", c.r, c.rho, c.lays), func(t *testing.T) {
			S := c.lays * c.L
			bend := unit.Degree(S / c.rho * 180 / math.Pi)
			if got := Mismatch(mm(c.r), mm(c.L), mm(c.rho), bend); !near(float64(got), c.formula, 0.5001e-4) {
				t.Errorf("%.5f, want %.4f", got, c.formula)
			}
			if got := Mismatch(mm(c.r), 0, mm(c.rho), bend); !near(float64(got), c.straight, 0.5001e-4) {
				t.Errorf("straight %.5f, want %.4f", got, c.straight)
			}
			// 72 phases miss the very top by 1 − cos 2.5° at most: 0.1 %.
			if got := spread(c.r, c.rho, c.L, S); got > c.numeric+0.6e-4 || got < c.numeric*0.999-0.6e-4 {
				t.Errorf("quadrature %.5f, table has %.4f", got, c.numeric)
			}
		})
	}
	if got := Mismatch(3, 72, 0, 90); got != 0 {
		t.Errorf("no axis radius: %v, want 0", got)
	}
}

// The formula against quadrature away from the table: never above its bound, and
// off by no more than second-order terms, (r/ρ)² of itself and a little.
func TestMismatchByQuadrature(t *testing.T) {
	rng := newRand(17)
	for range 60 {
		r := rng.between(0.5, 6)
		rho := r * rng.between(8, 40)
		L := r * rng.between(16, 40)
		S := L * rng.between(0.1, 3)
		got := float64(Mismatch(mm(r), mm(L), mm(rho), unit.Degree(S/rho*180/math.Pi)))
		bound := 2 * r * L / (math.Pi * rho) * math.Cos(math.Atan(2*math.Pi*r/L))
		if got > bound*(1+1e-12) {
			t.Errorf("r %.2f ρ %.1f L %.1f S %.1f: %.5f above the bound %.5f", r, rho, L, S, got, bound)
		}
		if want := spread(r, rho, L, S); math.Abs(got-want) > bound*(0.001+r*r/rho/rho) {
			t.Errorf("r %.2f ρ %.1f L %.1f S %.1f: %.5f, quadrature %.5f", r, rho, L, S, got, want)
		}
	}
}
