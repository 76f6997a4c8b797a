package heat

import "math"

// matrix is a symmetric matrix: its diagonal, and of each column what its front has in work.
type matrix struct {
	*front
	all       []float64 // the diagonal, then the columns one behind the other
	diagonal  []float64
	below     []float64
	over      []float64 // of factor: 1 / D
	square    []float64 // a row for each slot of what is in work
	line, sum []float64 // a value for each slot
}

// newMatrix is one of noughts.
func newMatrix(f *front) *matrix {
	n, most := len(f.pivot), f.most
	all := make([]float64, n+len(f.rows))
	return &matrix{f, all, all[:n:n], all[n:], make([]float64, n), make([]float64, most*most), make([]float64, most), make([]float64, most)}
}

// column is what stands below the diagonal in column j, and in which rows.
func (m *matrix) column(j int) ([]float64, []int32) {
	from, to := m.start[j], m.start[j+1]
	return m.below[from:to], m.rows[from:to]
}

// row is the first so many of what is in work for a slot.
func (m *matrix) row(slot, n int) []float64 { return m.square[slot*m.most:][:n] }

// factor turns the matrix into L and D of L D Lᵀ, in place: the diagonal holds D. False
// where it is not positive definite. Source: Cholesky's method, any textbook of numerical
// linear algebra.
func (m *matrix) factor() bool {
	_, ok := m.factorBelow(0)
	return ok
}

// factorBelow is factor for a matrix that has up to most eigenvalues below 0, and tells how many it has: as many
// as D (Sylvester's law of inertia). False where it has more, or is singular.
func (m *matrix) factorBelow(most int) (below int, ok bool) {
	work := 0 // slots taken; of what is in work the lower half is kept
	for j, d := range m.diagonal {
		for range m.enters[j] {
			work++
			clear(m.row(work-1, work))
		}
		work--
		v, column := m.line[:work], m.below[m.start[j]:][:work]
		d += m.take(int(m.pivot[j]), work, v)
		if d < 0 {
			below++
		}
		if d == 0 || math.IsNaN(d) || math.IsInf(d, 0) || below > most {
			return below, false
		}
		over := 1 / d
		m.diagonal[j], m.over[j] = d, over
		for slot := range column {
			v[slot] += column[slot]
			column[slot] = v[slot] * over
		}
		m.less(column, v)
	}
	return below, true
}

// less takes l times vᵀ off what is in work, four rows at once: what is above the diagonal then is
// not read.
func (m *matrix) less(l, v []float64) {
	slot := 0
	for ; slot+4 <= len(l); slot += 4 {
		n := slot + 4
		x := v[:n]
		a, b, c, d := m.row(slot, n)[:len(x)], m.row(slot+1, n)[:len(x)], m.row(slot+2, n)[:len(x)], m.row(slot+3, n)[:len(x)]
		la, lb, lc, ld := l[slot], l[slot+1], l[slot+2], l[slot+3]
		for k, x := range x {
			a[k] -= la * x
			b[k] -= lb * x
			c[k] -= lc * x
			d[k] -= ld * x
		}
	}
	for ; slot < len(l); slot++ {
		row, l := m.row(slot, slot+1), l[slot]
		for k, x := range v[:len(row)] {
			row[k] -= l * x
		}
	}
}

// take takes a slot out of work: its diagonal, and to v what the others have with it. The
// last moves into it.
func (m *matrix) take(slot, last int, v []float64) float64 {
	row := m.row(slot, slot+1)
	d := row[slot]
	copy(v, row[:slot])
	if slot == last {
		return d
	}
	moved := m.row(last, last+1)
	for k := slot + 1; k < last; k++ {
		at := &m.square[k*m.most+slot]
		v[k], *at = *at, moved[k]
	}
	v[slot] = moved[slot]
	copy(row, moved[:slot])
	row[slot] = moved[last]
	return d
}

// solve is x of L D Lᵀ x = y, in place of y.
func (m *matrix) solve(y []float64) {
	for j, x := range y {
		column, rows := m.column(j)
		for k, l := range column {
			y[rows[k]] -= l * x
		}
	}
	for j := len(y) - 1; j >= 0; j-- {
		x := y[j] * m.over[j]
		column, rows := m.column(j)
		for k, l := range column {
			x -= l * y[rows[k]]
		}
		y[j] = x
	}
}

// sides are how many right sides solveAll takes at once.
const sides = 3

// solveAll is the same for several right sides.
func (m *matrix) solveAll(y [][sides]float64) {
	for j, x := range y {
		column, rows := m.column(j)
		for k, l := range column {
			to := &y[rows[k]]
			to[0] -= l * x[0]
			to[1] -= l * x[1]
			to[2] -= l * x[2]
		}
	}
	for j := len(y) - 1; j >= 0; j-- {
		x, over := y[j], m.over[j]
		a, b, c := x[0]*over, x[1]*over, x[2]*over
		column, rows := m.column(j)
		for k, l := range column {
			from := &y[rows[k]]
			a -= l * from[0]
			b -= l * from[1]
			c -= l * from[2]
		}
		y[j] = [sides]float64{a, b, c}
	}
}

// inverse writes the diagonal of the inverse to out. No more of it is worked out than what is in
// work together: from the last row upward
//
//	Z_ij = [i = j]/D_i − Σ_{k>i} L_ki Z_kj
//
// Source: the recurrence of Takahashi, Fagan and Chin 1973 (from memory), which follows
// from Z = D⁻¹L⁻¹ + (I − Lᵀ)Z.
func (m *matrix) inverse(out []float64) {
	work := 0
	for j := len(m.diagonal) - 1; j >= 0; j-- {
		column := m.below[m.start[j]:][:work]
		s, d := m.sum[:work+1], m.over[j]
		m.times(column, s)
		for k, l := range column {
			s[k] = -s[k]
			d -= l * s[k]
		}
		out[j] = d
		// Row j takes its slot again, and what moved into that goes back to the end.
		slot := int(m.pivot[j])
		s[work] = s[slot]
		s[slot] = d
		left := work + 1 - int(m.enters[j])
		if left > work {
			back := m.row(work, left)
			for k := range work {
				back[k] = m.square[k*m.most+slot]
				m.square[k*m.most+work] = back[k]
			}
			back[work] = m.square[slot*m.most+slot]
		}
		if work = left; slot < work {
			copy(m.row(slot, work), s)
			for k, v := range s[:work] {
				m.square[k*m.most+slot] = v
			}
		}
	}
}

// times is what is in work times a column, four rows at once, which do not wait for each other.
func (m *matrix) times(column, to []float64) {
	n, slot := len(column), 0
	for ; slot+4 <= n; slot += 4 {
		a, b, c, d := m.row(slot, n)[:len(column)], m.row(slot+1, n)[:len(column)], m.row(slot+2, n)[:len(column)],
			m.row(slot+3, n)[:len(column)]
		var s0, s1, s2, s3 float64
		for k, l := range column {
			s0 += l * a[k]
			s1 += l * b[k]
			s2 += l * c[k]
			s3 += l * d[k]
		}
		to[slot], to[slot+1], to[slot+2], to[slot+3] = s0, s1, s2, s3
	}
	for ; slot < n; slot++ {
		s, row := 0.0, m.row(slot, n)[:len(column)]
		for k, l := range column {
			s += l * row[k]
		}
		to[slot] = s
	}
}
