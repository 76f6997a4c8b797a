package lay

import (
	"math"
)

// disc is a circle in the cross-section, in mm.
type disc struct{ x, y, r float64 }

// support is the distance of the hull's edge from the origin in direction (ux, uy).
func (d disc) support(ux, uy float64) float64 { return d.x*ux + d.y*uy + d.r }

// tangent returns the direction (unit normal) in which the outer tangent from a
// to b, going anticlockwise, touches both, and the length of that tangent. ok is
// false where one disc holds the other.
func tangent(a, b disc) (psi, length float64, ok bool) {
	dx, dy := b.x-a.x, b.y-a.y
	d2 := dx*dx + dy*dy
	dr := a.r - b.r
	l2 := d2 - dr*dr
	if l2 <= 0 || d2 == 0 {
		return 0, 0, false
	}
	psi = math.Atan2(dy, dx) - math.Acos(dr/math.Sqrt(d2))
	return psi, math.Sqrt(l2), true
}

// normal is the direction of tangent as a unit vector, without its angle.
func normal(a, b disc) (ux, uy float64, ok bool) {
	dx, dy := b.x-a.x, b.y-a.y
	d2 := dx*dx + dy*dy
	dr := a.r - b.r
	l2 := d2 - dr*dr
	if l2 <= 0 || d2 == 0 {
		return 0, 0, false
	}
	l := math.Sqrt(l2)
	return (dx*dr + dy*l) / d2, (dy*dr - dx*l) / d2, true
}

// hullPerimeter is the length of the convex hull of discs, by wrapping: from one
// disc to the one whose tangent turns least. It works for any set; O(n·h).
func hullPerimeter(ds []disc) float64 {
	if len(ds) == 0 {
		return 0
	}
	start := 0
	for i, d := range ds {
		if d.x+d.r > ds[start].x+ds[start].r {
			start = i
		}
	}
	total, turned, cur, phi := 0.0, 0.0, start, 0.0
	for range 2*len(ds) + 2 {
		next, best, bestLen := -1, math.MaxFloat64, 0.0
		for j := range ds {
			if j == cur {
				continue
			}
			psi, length, ok := tangent(ds[cur], ds[j])
			if !ok {
				continue
			}
			turn := math.Mod(psi-phi, 2*math.Pi)
			if turn < -1e-12 {
				turn += 2 * math.Pi
			}
			if turn < best-1e-12 || (turn < best+1e-12 && length > bestLen) {
				next, best, bestLen = j, turn, length
			}
		}
		if next < 0 || turned+best >= 2*math.Pi-1e-12 {
			break
		}
		total += ds[cur].r*math.Max(best, 0) + bestLen
		turned += best
		phi += best
		cur = next
	}
	return total + ds[cur].r*(2*math.Pi-turned)
}

// hull is the scratch of ring.
type hull struct{ on, edges []disc }

// ring is the length of the convex hull of discs given in rising angle round
// the origin, together with a circle of radius bed about the origin. It is one
// scan in the manner of Graham, O(n): a disc that does not reach the tangent of
// its neighbours is dropped, and where a tangent cuts the bed, the bed shows.
func (h *hull) ring(ds []disc, bed float64) float64 {
	n := len(ds)
	if n == 0 {
		return 2 * math.Pi * bed
	}
	far, reach := 0, 0.0
	for i, d := range ds {
		if v := math.Sqrt(d.x*d.x+d.y*d.y) + d.r; v > reach {
			far, reach = i, v
		}
	}
	if n < 3 || reach < bed {
		return hullPerimeter(append(append([]disc{}, ds...), disc{0, 0, bed}))
	}
	on := h.on[:0]
	for k := 0; k <= n; k++ {
		d := ds[(far+k)%n]
		for len(on) >= 2 && hidden(on[len(on)-2], on[len(on)-1], d) {
			on = on[:len(on)-1]
		}
		on = append(on, d)
	}
	h.on = on
	edges := h.edges[:0]
	for i := 0; i+1 < len(on); i++ {
		edges = append(edges, on[i])
		ux, uy, ok := normal(on[i], on[i+1])
		if !ok || bed > on[i].support(ux, uy)+1e-12 {
			edges = append(edges, disc{0, 0, bed})
		}
	}
	h.edges = append(edges, on[0])
	length, turned := walk(h.edges)
	if turned > 2*math.Pi+1e-6 {
		// A low disc beside a high one may clear the tangent to its next neighbour
		// and yet lie under the one to the bed; the walk then steps back.
		return hullPerimeter(append(append([]disc{}, ds...), disc{0, 0, bed}))
	}
	return length
}

// hidden reports whether b lies inside the outer tangent from a to c.
func hidden(a, b, c disc) bool {
	// The tangent that goes the long way round says nothing about b.
	if a.x*c.y-a.y*c.x < 0 {
		return false
	}
	ux, uy, ok := normal(a, c)
	return ok && b.support(ux, uy) <= a.support(ux, uy)+1e-12
}

// walk adds up tangents and arcs along a closed list of hull discs, and what it
// turns through: once round, unless a disc stands out of order.
func walk(on []disc) (total, turned float64) {
	phi, first := math.NaN(), 0.0
	for i := 0; i+1 < len(on); i++ {
		psi, length, ok := tangent(on[i], on[i+1])
		if !ok {
			continue
		}
		if math.IsNaN(phi) {
			first = psi
		} else {
			t := turn(phi, psi)
			total, turned = total+on[i].r*t, turned+t
		}
		phi, total = psi, total+length
	}
	if math.IsNaN(phi) {
		return 2 * math.Pi * on[0].r, 2 * math.Pi
	}
	t := turn(phi, first)
	return total + on[0].r*t, turned + t
}

func turn(from, to float64) float64 {
	t := math.Mod(to-from, 2*math.Pi)
	if t < -1e-9 {
		t += 2 * math.Pi
	}
	return math.Max(t, 0)
}
