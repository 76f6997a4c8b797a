package heattest

import (
	"errors"
	"math"
	"slices"
)

// system is a symmetric system of equations, its lower half row by row, the diagonal
// last in each row.
type system struct {
	start []int // of each row; one more at the end
	col   []int
	val   []float64
	right []float64
	seat  []int // of each face in val
}

// newSystem lays out the rows of a grid.
func newSystem(g *grid) *system {
	n := g.cells + len(g.wires)
	rows := make([][]int, n)
	for _, f := range g.faces {
		p, q := max(f.p, f.q), min(f.p, f.q)
		rows[p] = append(rows[p], q)
	}
	s := &system{start: make([]int, n+1), right: make([]float64, n), seat: make([]int, len(g.faces))}
	for i, r := range rows {
		slices.Sort(r)
		s.col = append(append(s.col, slices.Compact(r)...), i)
		s.start[i+1] = len(s.col)
	}
	s.val = make([]float64, len(s.col))
	for k, f := range g.faces {
		p, q := max(f.p, f.q), min(f.p, f.q)
		at, _ := slices.BinarySearch(s.col[s.start[p]:s.start[p+1]], q)
		s.seat[k] = s.start[p] + at
	}
	return s
}

// diagonal is where the diagonal of a row is.
func (s *system) diagonal(i int) int { return s.start[i+1] - 1 }

// fill sets the system of a grid: the conductivity of air, the coefficient of the surface
// in W/(m² K), the temperature round it.
func (s *system) fill(g *grid, air, h, around float64) {
	clear(s.val)
	clear(s.right)
	for k, f := range g.faces {
		c := f.conducts(air)
		s.val[s.seat[k]] -= c
		s.val[s.diagonal(f.p)] += c
		s.val[s.diagonal(f.q)] += c
	}
	for i, mm := range g.rim {
		s.val[s.diagonal(i)] += h * mm / 1000
		s.right[i] += h * mm / 1000 * around
	}
}

// errNoBalance says that a system has no steady state: heat grows faster with the
// temperature than what leaves.
var errNoBalance = errors.New("there is no steady state: resistance grows faster than heat leaves")

// solve finds x by conjugate gradients, from the x it is given, with the incomplete
// factor of Cholesky (its pattern that of the system) before each step.
func (s *system) solve(x []float64) error {
	n := len(s.right)
	factor := slices.Clone(s.val)
	work := make([]float64, n)
	for i := range n {
		row := s.col[s.start[i]:s.start[i+1]]
		for k, c := range row {
			work[c] = factor[s.start[i]+k]
		}
		own := work[i]
		for _, c := range row[:len(row)-1] {
			v := work[c]
			for k := s.start[c]; k < s.diagonal(c); k++ {
				v -= work[s.col[k]] * factor[k]
			}
			v *= factor[s.diagonal(c)] // which holds its inverse
			work[c] = v
			own -= v * v
		}
		if !(own > 0) {
			return errNoBalance
		}
		for k, c := range row[:len(row)-1] {
			factor[s.start[i]+k] = work[c]
		}
		factor[s.diagonal(i)] = 1 / math.Sqrt(own)
		for _, c := range row {
			work[c] = 0
		}
	}
	before := func(z, r []float64) {
		copy(z, r)
		for i := range n {
			v := z[i]
			for k := s.start[i]; k < s.diagonal(i); k++ {
				v -= factor[k] * z[s.col[k]]
			}
			z[i] = v * factor[s.diagonal(i)]
		}
		for i := n - 1; i >= 0; i-- {
			v := z[i] * factor[s.diagonal(i)]
			z[i] = v
			for k := s.start[i]; k < s.diagonal(i); k++ {
				z[s.col[k]] -= factor[k] * v
			}
		}
	}
	times := func(y, x []float64) {
		clear(y)
		for i := range n {
			v := s.val[s.diagonal(i)] * x[i]
			for k := s.start[i]; k < s.diagonal(i); k++ {
				v += s.val[k] * x[s.col[k]]
				y[s.col[k]] += s.val[k] * x[i]
			}
			y[i] += v
		}
	}
	r, z, p, q := make([]float64, n), make([]float64, n), make([]float64, n), make([]float64, n)
	times(r, x)
	for i := range r {
		r[i] = s.right[i] - r[i]
	}
	before(z, r)
	copy(p, z)
	rz := dot(r, z)
	enough := 0.0 // the first right side, as the factor weighs it
	before(q, s.right)
	enough = 1e-15 * dot(s.right, q)
	for step := 0; rz > enough; step++ {
		if step > 20*n || math.IsNaN(rz) {
			return errors.New("the gradients do not converge")
		}
		times(q, p)
		pq := dot(p, q)
		if !(pq > 0) {
			return errNoBalance
		}
		a := rz / pq
		for i := range x {
			x[i] += a * p[i]
			r[i] -= a * q[i]
		}
		before(z, r)
		next := dot(r, z)
		for i := range p {
			p[i] = z[i] + next/rz*p[i]
		}
		rz = next
	}
	return nil
}

func dot(a, b []float64) float64 {
	sum := 0.0
	for i := range a {
		sum += a[i] * b[i]
	}
	return sum
}
