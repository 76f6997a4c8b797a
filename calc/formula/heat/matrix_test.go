package heat

import (
	"math"
	"math/rand/v2"
	"testing"

	"pgregory.net/rapid"
)

// Random positive definite matrices in random envelopes: what the envelope's factors solve
// and invert, elimination of the whole matrix does too.
func TestMatrix(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 14).Draw(t, "n")
		first := make([]int, n)
		for i := range first {
			first[i] = rapid.IntRange(0, i).Draw(t, "first")
		}
		m, whole := newMatrix(newFront(first)), make([][]float64, n)
		for i := range whole {
			whole[i] = make([]float64, n)
		}
		put := func(i, j int, v float64) {
			if i == j {
				m.diagonal[i] += v
			} else {
				m.all[m.entry(i, j)] += v
			}
			whole[i][j] += v
			if i != j {
				whole[j][i] += v
			}
		}
		for i := range n {
			put(i, i, rapid.Float64Range(0.1, 2).Draw(t, "out"))
			for j := first[i]; j < i; j++ {
				if g := rapid.SampledFrom([]float64{0, 0.1, 1, 5}).Draw(t, "link"); g > 0 {
					put(i, j, -g)
					put(i, i, g)
					put(j, j, g)
				}
			}
		}
		y := make([]float64, n)
		for i := range y {
			y[i] = rapid.Float64Range(-3, 3).Draw(t, "y")
		}
		x := append([]float64{}, y...)
		if !m.factor() {
			t.Fatal("not positive definite")
		}
		all := make([][sides]float64, n)
		for i, v := range y {
			all[i] = [sides]float64{v, -2 * v, 0}
		}
		m.solve(x)
		m.solveAll(all)
		for i, want := range eliminate(whole, y) {
			if math.Abs(x[i]-want) > 1e-9*math.Max(1, math.Abs(want)) {
				t.Fatalf("x[%d] is %v, by elimination %v", i, x[i], want)
			}
		}
		for i, want := range x {
			if math.Abs(all[i][0]-want)+math.Abs(all[i][1]+2*want)+math.Abs(all[i][2]) > 1e-9*math.Max(1, math.Abs(want)) {
				t.Fatalf("x[%d] is %v, of three at once %v", i, want, all[i])
			}
		}
		diagonal := make([]float64, n)
		m.inverse(diagonal)
		for i, got := range diagonal {
			e := make([]float64, n)
			e[i] = 1
			if want := eliminate(whole, e)[i]; math.Abs(got-want) > 1e-9*math.Max(1, want) {
				t.Fatalf("inverse[%d] is %v, by elimination %v", i, got, want)
			}
		}
	})
	if m := newMatrix(newFront([]int{0, 0})); m.factor() {
		t.Error("noughts are factored")
	}
}

// A chain of places, each tied to the next by 1 and to the ground by 1, less what grows at some of them. With enough at one place it has
// one eigenvalue below 0, with enough at two that lie apart two: as many as its leading minors change their sign. Its factors
// solve and invert as those of any other.
func TestMatrixThatIsNotPositive(t *testing.T) {
	const n = 7
	for _, c := range []struct {
		at    []int
		by    float64
		below int
	}{{nil, 0, 0}, {[]int{3}, 1, 0}, {[]int{3}, 4, 1}, {[]int{0}, 9, 1}, {[]int{6}, 9, 1}, {[]int{1, 5}, 4, 2}, {[]int{0, 3, 6}, 9, 3}} {
		fill := func() (*matrix, [][]float64) {
			m, whole := newMatrix(newFront([]int{0, 0, 1, 2, 3, 4, 5})), make([][]float64, n)
			for i := range whole {
				whole[i] = make([]float64, n)
				whole[i][i] = 3
				if i == 0 || i == n-1 {
					whole[i][i] = 2
				}
				if i > 0 {
					whole[i][i-1], whole[i-1][i] = -1, -1
					m.all[m.entry(i, i-1)] = -1
				}
			}
			for _, k := range c.at {
				whole[k][k] -= c.by
			}
			for i := range whole {
				m.diagonal[i] = whole[i][i]
			}
			return m, whole
		}
		m, whole := fill()
		changes, minor, before := 0, 1.0, 1.0 // of a chain: each minor from the two before it
		for i := range n {
			next := whole[i][i]*minor - before
			if i == 0 {
				next = whole[0][0]
			}
			if next*minor < 0 {
				changes++
			}
			minor, before = next, minor
		}
		if changes != c.below {
			t.Fatalf("%v less by %v: the minors change their sign %d times", c.at, c.by, changes)
		}
		if got := m.factor(); got != (c.below == 0) {
			t.Errorf("%v less by %v: positive definite %v", c.at, c.by, got)
		}
		for most := range 4 {
			m, _ = fill()
			below, ok := m.factorBelow(most)
			if ok != (c.below <= most) || ok && below != c.below {
				t.Errorf("%v less by %v, up to %d: %d below 0, %v", c.at, c.by, most, below, ok)
			}
			if !ok {
				continue
			}
			inverse := make([]float64, n)
			m.inverse(inverse)
			for i := range n {
				e := make([]float64, n)
				e[i] = 1
				want := eliminate(whole, e)
				m.solve(e)
				for k := range n {
					if math.Abs(e[k]-want[k]) > 1e-9 || math.Abs(inverse[i]-want[i]) > 1e-9 {
						t.Fatalf("%v less by %v: column %d of its inverse is %v with %v, want %v", c.at, c.by, i, e, inverse[i], want)
					}
				}
			}
		}
	}
}

// eliminate solves by Gauss's elimination with a choice of pivots.
func eliminate(of [][]float64, y []float64) []float64 {
	n := len(y)
	a := make([][]float64, n)
	for i := range a {
		a[i] = append(append([]float64{}, of[i]...), y[i])
	}
	for c := range n {
		best := c
		for r := c; r < n; r++ {
			if math.Abs(a[r][c]) > math.Abs(a[best][c]) {
				best = r
			}
		}
		a[c], a[best] = a[best], a[c]
		for r := range n {
			if r == c {
				continue
			}
			f := a[r][c] / a[c][c]
			for k := c; k <= n; k++ {
				a[r][k] -= f * a[c][k]
			}
		}
	}
	x := make([]float64, n)
	for i := range x {
		x[i] = a[i][n] / a[i][i]
	}
	return x
}

// A ring of places is solved where every equation of it holds, the two round the corner as well.
func TestRingOfPlaces(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 4))
	for range 20 {
		var diagonal, y [rays]float64
		round := 0.2 + rng.Float64()
		for k := range diagonal {
			diagonal[k], y[k] = 2*round+0.1+rng.Float64(), rng.Float64()-0.5
		}
		x := cyclic(&diagonal, round, &y)
		for k := range x {
			got := diagonal[k]*x[k] - round*(x[(k+rays-1)%rays]+x[(k+1)%rays])
			if math.Abs(got-y[k]) > 1e-11 {
				t.Fatalf("place %d: %v, want %v", k, got, y[k])
			}
		}
	}
}

// A wall of insulation by its circuit, solved whole: each slice of the surface leads to the core, to what lies outside it and, five times
// as well as to the core, to its place of the ring, which leads to the places on either side of it.
func TestWallByItsCircuit(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 5))
	for _, depth := range []float64{0.05, 0.3, 1.2} {
		var outside, gives [rays]float64
		for k := range outside {
			outside[k] = 0.05 * rng.Float64() * rng.Float64()
			if k%5 == 0 {
				outside[k] = 0
			}
		}
		step := 2 * math.Pi / rays
		core, round := float64(InsulationK)*step/depth, float64(InsulationK)*depth/3/step
		n := 2 * rays // the slices, then their places of the ring
		of, y := make([][]float64, n), make([]float64, n)
		for k := range of {
			of[k] = make([]float64, n)
		}
		lead := func(i, j int, by float64) {
			of[i][i], of[j][j] = of[i][i]+by, of[j][j]+by
			of[i][j], of[j][i] = of[i][j]-by, of[j][i]-by
		}
		for k := range rays {
			of[k][k], y[k] = of[k][k]+core+outside[k], core
			lead(k, rays+k, 5*core)
			lead(rays+k, rays+(k+1)%rays, round)
		}
		warm := eliminate(of, y)
		wall(depth, &outside, &gives)
		for k := range gives {
			if want := outside[k] * warm[k]; math.Abs(gives[k]-want) > 1e-10 {
				t.Fatalf("depth %v, slice %d gives %v, want %v", depth, k, gives[k], want)
			}
		}
	}
}
