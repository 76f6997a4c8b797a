package lay

import "slices"

// chains is scratch for the search of lost components.
type chains struct {
	kind []int     // which size each is of, in laid order
	size []float64 // the different sizes
	at   []float64 // θ of two sizes at the radius in hand
	best []float64 // per place: most angle of a chain that ends there
	from []int     // the neighbour before it in that chain; what it skips is lost
}

func newChains(d []float64) chains {
	c := chains{kind: make([]int, len(d)), best: make([]float64, len(d)+1), from: make([]int, len(d)+1)}
	for i, x := range d {
		k := slices.Index(c.size, x)
		if k < 0 {
			k, c.size = len(c.size), append(c.size, x)
		}
		c.kind[i] = k
	}
	c.at = make([]float64, len(c.size)*len(c.size))
	return c
}

// longest finds the tightest chain once round: the one whose angles add up to
// most, starting and ending at the largest component, which is never lost.
//
// Every pair of places is looked at, but θ is worked out once for a pair of
// sizes: a layer holds many components of few sizes.
func (f *fitter) longest(r, lay float64) {
	n, c := len(f.d), &f.lost
	if c.best == nil {
		*c = newChains(f.d)
	}
	m := len(c.size)
	for i, a := range c.size {
		for j := range i + 1 {
			t := angle(a/2, c.size[j]/2, r, lay)
			c.at[i*m+j], c.at[j*m+i] = t, t
		}
	}
	s := f.largest()
	for k := 1; k <= n; k++ {
		c.best[k] = -1
		row := c.at[c.kind[(s+k)%n]*m:]
		for i := k - 1; i >= 0; i-- {
			if i == 0 && k == n && n > 1 {
				break // the largest with itself is no neighbour
			}
			at := s + i
			if at >= n {
				at -= n
			}
			if v := c.best[i] + row[c.kind[at]]; v > c.best[k]+1e-12 {
				c.best[k], c.from[k] = v, i
			}
		}
	}
}

func (f *fitter) largest() int {
	s := 0
	for i, x := range f.d {
		if x > f.d[s] {
			s = i
		}
	}
	return s
}
