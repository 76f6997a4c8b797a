package lay

import (
	"math"
	"slices"

	"contralay/model/unit"
)

// searched is the largest group whose every order is tried; more are stacked.
const searched = 6

// Pack finds the smallest circle that holds circles of the given diameters: what
// a group that is only twisted comes to. Two and three are exact. Four to six
// are searched over every order round the circle, with and without one off the
// wall; the result stands within 0.5 % of the best known. More than six are
// stacked one by one against the middle, an upper bound.
func Pack(d []unit.Millimetre) Group {
	n := len(d)
	switch {
	case n == 0:
		return Group{}
	case n == 1:
		return Group{Over: d[0], Tape: d[0], X: []unit.Millimetre{0}, Y: []unit.Millimetre{0}}
	case n <= 5 && allEqual(d):
		g := ringGroup(n, d[0])
		return g
	}
	r := make([]float64, n)
	for i, x := range d {
		r[i] = float64(x) / 2
	}
	var ds []disc
	var R float64
	switch {
	case n == 2:
		R = r[0] + r[1]
		ds = []disc{{r[0] - R, 0, r[0]}, {R - r[1], 0, r[1]}}
	case n == 3:
		R, ds = three(r)
	case n <= searched:
		R, ds = bestRing(r)
	default:
		R, ds = stack(r)
	}
	g := Group{Over: unit.Millimetre(2 * R), Tape: unit.Millimetre(hullPerimeter(ds) / math.Pi)}
	for _, c := range ds {
		g.X, g.Y = append(g.X, unit.Millimetre(c.x)), append(g.Y, unit.Millimetre(c.y))
	}
	return g
}

// three sets three circles in contact and finds their smallest enclosing circle:
// that of the two largest where the third hides in the crescent beside them
// (r₃ ≤ r₁r₂(r₁+r₂)/(r₁²+r₁r₂+r₂²)), else the outer Soddy circle of Descartes'
// theorem, k₄ = k₁+k₂+k₃ − 2√(k₁k₂+k₂k₃+k₃k₁).
func three(r []float64) (float64, []disc) {
	by := []int{0, 1, 2}
	slices.SortStableFunc(by, func(i, j int) int { return cmpDown(r[i], r[j]) })
	a, b, c := r[by[0]], r[by[1]], r[by[2]]
	// a at the origin, b on the x axis, c above, all touching.
	x2 := a + b
	x3 := ((a+c)*(a+c) + x2*x2 - (b+c)*(b+c)) / (2 * x2)
	y3 := math.Sqrt(math.Max(0, (a+c)*(a+c)-x3*x3))
	R, cx, cy := a+b, b, 0.0
	if c > a*b*(a+b)/(a*a+a*b+b*b)*(1+1e-12) {
		ka, kb, kc := 1/a, 1/b, 1/c
		R = -1 / (ka + kb + kc - 2*math.Sqrt(ka*kb+kb*kc+kc*ka))
		// |centre − pᵢ| = R − rᵢ; differences of these are linear.
		cx = (x2*x2 + (R-a)*(R-a) - (R-b)*(R-b)) / (2 * x2)
		cy = ((R-a)*(R-a) - (R-c)*(R-c) + x3*x3 + y3*y3 - 2*cx*x3) / (2 * y3)
	}
	out := make([]disc, 3)
	out[by[0]] = disc{-cx, -cy, a}
	out[by[1]] = disc{x2 - cx, -cy, b}
	out[by[2]] = disc{x3 - cx, y3 - cy, c}
	return R, out
}

func cmpDown(a, b float64) int {
	switch {
	case a > b:
		return -1
	case a < b:
		return 1
	}
	return 0
}

// bestRing tries every order of the circles round the wall of the holding circle,
// all of them or with one that lies off the wall, in the middle or beside it.
func bestRing(r []float64) (float64, []disc) {
	n := len(r)
	by := make([]int, n)
	for i := range by {
		by[i] = i
	}
	slices.SortStableFunc(by, func(i, j int) int { return cmpDown(r[i], r[j]) })
	best := math.Inf(1)
	var ds []disc
	var found wall
	try := func(w wall) {
		R, at, ok := w.shrink(best)
		if !ok {
			return
		}
		best, ds, found = R, make([]disc, n), w
		for k, i := range w.order {
			s, c := math.Sincos(at[k])
			D := w.off(i, R)
			ds[i] = disc{D * c, D * s, r[i]}
		}
	}
	for k := -1; k < n; k++ {
		if k > 0 && r[by[k]] == r[by[k-1]] {
			continue
		}
		w := wall{r: r, mid: -1}
		ring := slices.Clone(by)
		if k >= 0 {
			w.mid = by[k]
			ring = slices.Delete(ring, k, k+1)
		}
		eachOrder(ring[1:], r, func(rest []int) {
			order := append([]int{ring[0]}, rest...)
			if w.mid < 0 {
				w.order = order
				try(w)
				return
			}
			for at := 1; at <= len(order); at++ {
				w.order = slices.Insert(slices.Clone(order), at, w.mid)
				for step := range offWall {
					w.out = float64(step) / offWall
					try(w)
				}
			}
		})
	}
	if w, out := found, found.out; w.mid >= 0 {
		for step := 1 - offWall; step < offWall; step++ {
			w.out = math.Max(0, out+float64(step)/offWall/offWall)
			try(w)
		}
	}
	return best, ds
}

// offWall is how many places from the middle to the wall are tried for the circle
// that lies off it, and again as many to either side of the best of them.
const offWall = 16

// wall is one order of circles round the wall of a holding circle, the largest at
// the wall first. One of them, mid (−1: none), lies off the wall, out of the way
// from the middle (0) to the wall (1).
type wall struct {
	order []int
	r     []float64
	mid   int
	out   float64
}

// off is how far circle i lies from the middle of a holding circle of radius R.
func (w wall) off(i int, R float64) float64 {
	if i == w.mid {
		return w.out * (R - w.r[i])
	}
	return R - w.r[i]
}

// shrink finds the smallest wall radius below limit on which the order fits.
func (w wall) shrink(limit float64) (float64, []float64, bool) {
	lo, hi := 0.0, limit*(1-1e-6)
	for i, a := range w.order {
		for _, b := range w.order[i+1:] {
			lo = math.Max(lo, w.r[a]+w.r[b])
		}
	}
	if math.IsInf(limit, 1) {
		hi = 0
		for _, x := range w.r {
			hi += 2 * x
		}
	}
	if hi < lo {
		return 0, nil, false
	}
	if _, ok := w.round(hi); !ok {
		return 0, nil, false
	}
	if _, ok := w.round(lo); ok {
		hi = lo
	}
	for range 60 {
		mid := (lo + hi) / 2
		if mid <= lo || mid >= hi {
			break
		}
		if _, ok := w.round(mid); ok {
			hi = mid
		} else {
			lo = mid
		}
	}
	at, ok := w.round(hi)
	return hi, at, ok
}

// round sets circles along the wall of a circle of radius R, each as early as all
// before it allow, and reports whether the first still fits after the last. The
// first is the largest at the wall, so nothing reaches past it to those behind.
func (w wall) round(R float64) ([]float64, bool) {
	n := len(w.order)
	at := make([]float64, n+1)
	for k := 1; k <= n; k++ {
		b := w.order[k%n]
		for i := range k {
			if i == 0 && k == n {
				continue
			}
			a := w.order[i]
			at[k] = math.Max(at[k], at[i]+apartAngle(w.r[a]+w.r[b], w.off(a, R), w.off(b, R)))
		}
		if at[k] > twoPi+1e-12 {
			return nil, false
		}
	}
	open := 1.0
	if at[n] > 0 {
		open = twoPi / at[n]
	}
	for k := range at {
		at[k] *= open
	}
	return at[:n], true
}

// apartAngle is the angle round the middle that keeps two centres, A and B from
// it, the distance s apart (law of cosines); infinite where none does.
func apartAngle(s, A, B float64) float64 {
	const hair = 1e-12
	switch {
	case A+B < s*(1-hair):
		return math.Inf(1)
	case math.Abs(A-B) >= s:
		return 0
	}
	return math.Acos(math.Max(-1, math.Min(1, (A*A+B*B-s*s)/(2*A*B))))
}

// eachOrder calls f with every different order of idx; equal radii are not told apart.
func eachOrder(idx []int, r []float64, f func([]int)) {
	p := slices.Clone(idx)
	slices.SortStableFunc(p, func(i, j int) int { return -cmpDown(r[i], r[j]) })
	less := func(i, j int) bool { return r[p[i]] < r[p[j]] }
	for {
		f(p)
		i := len(p) - 2
		for i >= 0 && !less(i, i+1) {
			i--
		}
		if i < 0 {
			return
		}
		j := len(p) - 1
		for !less(i, j) {
			j--
		}
		p[i], p[j] = p[j], p[i]
		slices.Reverse(p[i+1:])
	}
}
