package lay

import (
	"math"
	"slices"
)

// stack sets circles one by one, largest first, each where it touches two that
// lie already and comes nearest to the middle; the holding circle is then drawn
// round their common middle. It is how a straight bundle is pushed together by
// hand, not the densest packing.
func stack(r []float64) (float64, []disc) {
	n := len(r)
	by := make([]int, n)
	for i := range by {
		by[i] = i
	}
	slices.SortStableFunc(by, func(i, j int) int { return cmpDown(r[i], r[j]) })
	set := make([]disc, 0, n)
	for _, i := range by {
		switch len(set) {
		case 0:
			set = append(set, disc{0, 0, r[i]})
		case 1:
			set = append(set, disc{set[0].r + r[i], 0, r[i]})
		default:
			set = append(set, nearest(set, r[i]))
		}
	}
	cx, cy, R := enclose(set)
	out := make([]disc, n)
	for k, i := range by {
		out[i] = disc{set[k].x - cx, set[k].y - cy, set[k].r}
	}
	return R, out
}

// nearest is the free place for radius r that touches two of set and lies
// nearest to the origin.
func nearest(set []disc, r float64) disc {
	best, at := math.MaxFloat64, disc{}
	for i, a := range set {
		for _, b := range set[i+1:] {
			for _, p := range between(a, b, r) {
				if d := math.Hypot(p.x, p.y); d < best-1e-12 && free(set, p) {
					best, at = d, p
				}
			}
		}
	}
	return at
}

// between is the two places of radius r that touch both a and b.
func between(a, b disc, r float64) []disc {
	dx, dy := b.x-a.x, b.y-a.y
	d := math.Hypot(dx, dy)
	A, B := a.r+r, b.r+r
	if d == 0 || d > A+B {
		return nil
	}
	u := (A*A + d*d - B*B) / (2 * d)
	h2 := A*A - u*u
	if h2 < 0 {
		return nil
	}
	h := math.Sqrt(h2)
	x, y := a.x+u*dx/d, a.y+u*dy/d
	return []disc{{x - h*dy/d, y + h*dx/d, r}, {x + h*dy/d, y - h*dx/d, r}}
}

func free(set []disc, p disc) bool {
	for _, q := range set {
		if s := p.r + q.r - 1e-9; (p.x-q.x)*(p.x-q.x)+(p.y-q.y)*(p.y-q.y) < s*s {
			return false
		}
	}
	return true
}

// enclose is the smallest circle round a set, by stepping towards the farthest
// disc with a shrinking step (Badoiu and Clarkson, 2003); then the radius is
// taken from the true distances, so it always encloses.
func enclose(set []disc) (x, y, R float64) {
	for i := 1; i <= 4000; i++ {
		far, reach := 0, -1.0
		for k, d := range set {
			if h := math.Hypot(d.x-x, d.y-y) + d.r; h > reach {
				far, reach = k, h
			}
		}
		d := set[far]
		x += (d.x - x) / float64(i+1)
		y += (d.y - y) / float64(i+1)
	}
	for _, d := range set {
		R = math.Max(R, math.Hypot(d.x-x, d.y-y)+d.r)
	}
	return x, y, R
}
