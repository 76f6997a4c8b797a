package plan

import (
	"math"

	"contralay/calc/formula/plan/ring"
)

// What a stack will still cost is never less than what these bounds say, so that a stack that cannot
// become cheaper than the best plan known need not be built, and where none is left the best is proven.
//
// Three bounds, all for the layers still to come on a crown c:
//
//   - Area. Neighbours of radii a, e on inner radius r take θ ≥ 2·s·√(ae/((r+a)(r+e))), s = 1/cos λ at its
//     least, so that a ring of one turn holds Σd² ≤ (π/4)·F/s·(over² − c²). F is 1 where the thinnest is at
//     least 0.296 of the thickest, for then (1 + x²)/(2√x) ≤ 1; thinner ones lie better between thick ones.
//   - Layers. Every size lies in some layer, a layer adds twice its thickest, and what its sizes differ.
//   - The last ring. What does not close on the crown itself, stood off as far as allowed, takes two layers.

// bounds is what is worked out once for a question.
type bounds struct {
	s     *stacking
	tight float64   // F: see area
	parts []parting // by sizes still to lay, a set of bits
	rings map[float64]ringAngles
	last  []lastRing // the crown that was asked for last, by largest size
	free  bool       // nothing is known of a ring to come: layers held further out have their own lay and binder
}

// ringAngles is θ on one crown at the most a layer may stand off it: for each largest size by size, size, once
// it is asked for.
type ringAngles [][]float64

// lastRing is the angles on one crown for one largest size.
type lastRing struct {
	crown float64
	at    []float64
}

// mostParts bounds the layers that bounds tell apart, mostSet the sizes: thicker ones than that many are
// left out. mostRings bounds what is kept of crowns.
const (
	mostParts = 7
	mostSet   = 7
	mostRings = 2000
)

func newBounds(s *stacking) *bounds {
	b := &bounds{s: s, rings: map[float64]ringAngles{}, last: make([]lastRing, len(s.d)), parts: make([]parting, 1<<min(len(s.d), mostSet))}
	b.tight = 1
	if k := len(s.d); k > 0 {
		if s.d[0] < 0.2957*s.d[k-1] {
			b.tight = 1.0625 // (1 + x²)/(2√x) at a quarter of the thickest; thinner ones vanish between thick ones
		}
	}
	for at, h := range s.held {
		if at > 0 && (h.how.Lay > 0 || h.how.Bind > 0 || h.locked) {
			b.free = true
		}
	}
	return b
}

// parting is what a set of sizes costs at least that is parted among so many layers, by number.
type parting struct {
	known  bool
	adds   [mostParts + 1]float64 // twice the thickest of each and what their sizes differ
	spread [mostParts + 1]float64 // what their sizes differ, alone
}

// partings parts the sizes of a set into intervals, one a layer; a layer more is one of the thinnest.
func (b *bounds) partings(set int) *parting {
	p := &b.parts[set]
	if p.known {
		return p
	}
	p.known = true
	var d []int
	for i := range b.s.d {
		if set>>i&1 == 1 {
			d = append(d, i)
		}
	}
	for _, t := range []struct {
		least *[mostParts + 1]float64
		twice float64
	}{{&p.adds, 2}, {&p.spread, 0}} {
		from := make([]float64, len(d)+1) // the least for the first k sizes in so many layers
		for k := 1; k <= len(d); k++ {
			from[k] = math.Inf(1)
		}
		t.least[0] = math.Inf(1)
		for m := 1; m <= mostParts; m++ {
			next := make([]float64, len(d)+1)
			for k := range next {
				next[k] = from[k] + t.twice*b.s.d[d[0]]
				for j := range k {
					_, spread := b.s.lumps(d[j], d[k-1])
					next[k] = math.Min(next[k], from[j]+t.twice*b.s.d[d[k-1]]+spread)
				}
			}
			from, t.least[m] = next, next[len(d)]
		}
	}
	return p
}

// byArea is the least that layers on crown c add to over, to hold components of that Σd², of sizes lo to hi.
func (b *bounds) byArea(c, area float64, lo, hi int) float64 {
	return math.Sqrt(c*c+area/b.density(c, lo, hi)) - c
}

// holds is the most Σd² that layers on crown c hold which add so much to over.
func (b *bounds) holds(c, adds float64, lo, hi int) float64 {
	return adds * (2*c + adds) * b.density(c, lo, hi)
}

// density is the most Σd² of sizes lo to hi in a ring on crown c or further out, by over² less c².
func (b *bounds) density(c float64, lo, hi int) float64 {
	s := 1.0
	if !b.free && b.s.rules.LayRatio > 0 {
		t := math.Pi * (c + b.s.d[lo]) / (float64(b.s.rules.LayRatio) * (c + 2*b.s.d[hi]))
		s = math.Sqrt(1 + t*t)
	}
	return math.Pi / 4 * b.tight / s
}

// closes reports whether counts may close in one layer on crown c, stood off as far as allowed.
func (b *bounds) closes(cnt []int, c float64, lo, hi, n int) bool {
	if b.free || n < 3 {
		return true
	}
	s := b.s
	if s.loses(lo, hi) {
		return true // only the laying itself knows
	}
	if b.last[hi].at == nil || b.last[hi].crown != c {
		b.last[hi] = lastRing{c, b.farthest(c, hi)}
	}
	at := b.last[hi].at
	s.effort--
	return ring.ZigZag(cnt, n, at) <= twoPi+1e-9
}

// farthest is θ by size, size on crown c, stood off as far as allowed, in a layer whose largest is hi.
func (b *bounds) farthest(c float64, hi int) []float64 {
	s, k := b.s, len(b.s.d)
	g := b.rings[c]
	if g == nil {
		if len(b.rings) >= mostRings {
			clear(b.rings)
		}
		g = make(ringAngles, k)
		b.rings[c] = g
	}
	if g[hi] == nil {
		at := make([]float64, k*k)
		r := c/2 + s.lift*s.d[hi]
		ring.Table(s.d, hi, r, float64(s.rules.LayRatio)*(2*r+2*s.d[hi]), at)
		g[hi] = at
	}
	return g[hi]
}

// toCome is the least that counts, laid on crown c, add to the cost.
func (b *bounds) toCome(cnt []int, c float64) float64 {
	set, area, lo, hi, n := 0, 0.0, -1, 0, 0
	for i, k := range cnt {
		if k > 0 {
			if i < mostSet {
				set |= 1 << i
			}
			if lo < 0 {
				lo = i
			}
			d := b.s.d[i]
			hi, n, area = i, n+k, area+float64(k)*d*d
		}
	}
	if n == 0 {
		return 0
	}
	over := b.byArea(c, area, lo, hi)
	if set == 0 {
		return over
	}
	p := b.partings(set)
	least := max(p.adds[mostParts], over) // so many layers or more
	for m := mostParts - 1; m >= 2; m-- {
		least = min(least, max(p.adds[m], over+p.spread[m]))
	}
	_, spread := b.s.lumps(lo, hi)
	if one := max(2*b.s.d[hi], over) + spread; one < least && b.closes(cnt, c, lo, hi, n) {
		return one
	}
	return least
}
