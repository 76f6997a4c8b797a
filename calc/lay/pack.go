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
// are searched over every order round the circle, with and without one in the
// middle; the result stands within 0.5 % of the best known. More than six are
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
// all of them or with one in the middle.
func bestRing(r []float64) (float64, []disc) {
	n := len(r)
	by := make([]int, n)
	for i := range by {
		by[i] = i
	}
	slices.SortStableFunc(by, func(i, j int) int { return cmpDown(r[i], r[j]) })
	best := math.Inf(1)
	var ds []disc
	for mid := -1; mid < n; mid++ {
		if mid > 0 && r[by[mid]] == r[by[mid-1]] {
			continue
		}
		ring := make([]int, 0, n)
		for k, i := range by {
			if k != mid {
				ring = append(ring, i)
			}
		}
		m := 0.0
		if mid >= 0 {
			m = r[by[mid]]
		}
		eachOrder(ring[1:], r, func(rest []int) {
			order := append([]int{ring[0]}, rest...)
			R, at, ok := shrink(order, r, m, best)
			if !ok {
				return
			}
			best, ds = R, make([]disc, n)
			for k, i := range order {
				s, c := math.Sincos(at[k])
				ds[i] = disc{(R - r[i]) * c, (R - r[i]) * s, r[i]}
			}
			if mid >= 0 {
				ds[by[mid]] = disc{0, 0, m}
			}
		})
	}
	return best, ds
}

// shrink finds the smallest wall radius below limit on which the order fits with
// a circle of radius m in the middle (0: none).
func shrink(order []int, r []float64, m, limit float64) (float64, []float64, bool) {
	lo := 0.0
	for i, a := range order {
		if m > 0 {
			lo = math.Max(lo, 2*r[a]+m)
		}
		for _, b := range order[i+1:] {
			lo = math.Max(lo, r[a]+r[b])
		}
	}
	hi := limit * (1 - 1e-6)
	if math.IsInf(limit, 1) {
		hi = 0
		for _, x := range r {
			hi += 2 * x
		}
	}
	if hi < lo {
		return 0, nil, false
	}
	if _, ok := round(order, r, hi); !ok {
		return 0, nil, false
	}
	if _, ok := round(order, r, lo); ok {
		hi = lo
	}
	for range 60 {
		mid := (lo + hi) / 2
		if mid <= lo || mid >= hi {
			break
		}
		if _, ok := round(order, r, mid); ok {
			hi = mid
		} else {
			lo = mid
		}
	}
	at, ok := round(order, r, hi)
	return hi, at, ok
}

// round sets circles along the wall of a circle of radius R, each as early as all
// before it allow, and reports whether the first still fits after the last.
func round(order []int, r []float64, R float64) ([]float64, bool) {
	n := len(order)
	at := make([]float64, n+1)
	for k := 1; k <= n; k++ {
		for i := range k {
			if i == 0 && k == n {
				continue
			}
			at[k] = math.Max(at[k], at[i]+wallAngle(r[order[i]], r[order[k%n]], R))
		}
	}
	if at[n] > twoPi+1e-12 {
		return nil, false
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

// wallAngle is the angle between the centres of two circles that touch each other
// and the wall of radius R from inside (law of cosines).
func wallAngle(a, b, R float64) float64 {
	A, B := R-a, R-b
	if A <= 0 || B <= 0 {
		return 0
	}
	c := (A*A + B*B - (a+b)*(a+b)) / (2 * A * B)
	return math.Acos(math.Max(-1, math.Min(1, c)))
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
