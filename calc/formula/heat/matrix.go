package heat

import "math"

// matrix is symmetric, and row i holds nothing to the left of column first[i]: what is
// kept of it is its envelope, the diagonal last in each row.
type matrix struct {
	first []int
	row   [][]float64
	all   []float64 // the rows, one behind the other
	z     []float64 // of inverse
}

// newMatrix is one of noughts with an envelope.
func newMatrix(first []int) *matrix {
	size := 0
	for i, f := range first {
		size += i - f + 1
	}
	all := make([]float64, size)
	m := &matrix{first: first, row: make([][]float64, len(first)), all: all}
	for i, f := range first {
		m.row[i], all = all[:i-f+1:i-f+1], all[i-f+1:]
	}
	return m
}

// add adds to entry i, j; j ≤ i.
func (m *matrix) add(i, j int, v float64) { m.row[i][j-m.first[i]] += v }

// factor turns the matrix into L and D of L D Lᵀ, in place: the diagonal holds D. False
// where it is not positive definite. Source: Cholesky's method in an envelope, any
// textbook of numerical linear algebra.
func (m *matrix) factor() bool {
	for i, ri := range m.row {
		fi := m.first[i]
		for j := fi; j < i; j++ {
			// Less Σ_k L_ik D_k L_jk over the columns that both hold; what row i holds
			// so far is L_ik D_k.
			rj, fj := m.row[j], m.first[j]
			from := max(fi, fj)
			a := ri[from-fi : j-fi]
			c := rj[from-fj:][:len(a)]
			sum := ri[j-fi]
			for k, v := range a {
				sum -= v * c[k]
			}
			ri[j-fi] = sum
		}
		d := ri[i-fi]
		for j := fi; j < i; j++ {
			rj := m.row[j]
			l := ri[j-fi] / rj[len(rj)-1]
			d -= l * ri[j-fi]
			ri[j-fi] = l
		}
		if !(d > 0) || math.IsInf(d, 0) {
			return false
		}
		ri[i-fi] = d
	}
	return true
}

// solve is x of L D Lᵀ x = y, in place of y.
func (m *matrix) solve(y []float64) {
	for i, r := range m.row {
		f := m.first[i]
		sum := y[i]
		for k, l := range r[:i-f] {
			sum -= l * y[f+k]
		}
		y[i] = sum
	}
	for i, r := range m.row {
		y[i] /= r[len(r)-1]
	}
	for i := len(m.row) - 1; i >= 0; i-- {
		f, x := m.first[i], y[i]
		for k, l := range m.row[i][:i-f] {
			y[f+k] -= l * x
		}
	}
}

// inverse is the diagonal of the inverse, with no more of it than the envelope: from the
// last row upward
//
//	Z_ij = [i = j]/D_i − Σ_{k>i} L_ki Z_kj
//
// Source: the recurrence of Takahashi, Fagan and Chin 1973 (from memory), which follows
// from Z = D⁻¹L⁻¹ + (I − Lᵀ)Z.
func (m *matrix) inverse() []float64 {
	n, wide := len(m.row), 0
	for i, f := range m.first {
		wide = max(wide, i-f)
	}
	// Row i of z holds columns i … i+wide, of which only those of the envelope count.
	span := wide + 1
	if m.z == nil {
		m.z = make([]float64, n*span)
	}
	z := m.z
	clear(z)
	out, sum, column := make([]float64, n), make([]float64, wide), make([]float64, wide)
	for i := n - 1; i >= 0; i-- {
		below := column[:0] // L_ki for k = i+1 …, 0 where row k does not reach column i
		last := 0
		for k := i + 1; k < min(n, i+span); k++ {
			l := 0.0
			if f := m.first[k]; f <= i {
				l, last = m.row[k][i-f], k-i
			}
			below = append(below, l)
		}
		below = below[:last]
		s := sum[:last]
		clear(s)
		for a, l := range below {
			if l == 0 {
				continue
			}
			// Z_kj of a pair counts for both of them.
			row, right, to := z[(i+1+a)*span:][:last-a], below[a:], s[a:]
			own := 0.0
			for t := 1; t < len(row) && t < len(right) && t < len(to); t++ {
				own += right[t] * row[t]
				to[t] -= l * row[t]
			}
			to[0] -= own + l*row[0]
		}
		r := m.row[i]
		d := 1 / r[len(r)-1]
		for a, l := range below {
			z[i*span+1+a] = s[a]
			d -= l * s[a]
		}
		z[i*span], out[i] = d, d
	}
	return out
}
