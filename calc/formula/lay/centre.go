package lay

import (
	"math"

	"contralay/model/unit"
)

// Group is a handful of components bundled without a core: a centre, or a
// branch that is only twisted or straight.
type Group struct {
	Over unit.Millimetre   // smallest circle that holds them
	Tape unit.Millimetre   // convex hull ÷ π
	Rod  unit.Millimetre   // filler in the middle of five equal ones; else 0
	X, Y []unit.Millimetre // centre of each, from the middle of that circle
}

// RodOfFive is the hole between five equal circles in a ring, in diameters:
// 1/sin 36° − 1 = 0.7013. The rod that fills it keeps the ring round.
const RodOfFive unit.Ratio = 0.70130161670408

// CanBeCentre reports whether diameters can be the centre of a laid bundle: one;
// two to five equal; two or three unequal in contact.
func CanBeCentre(d []unit.Millimetre) bool {
	switch n := len(d); {
	case n == 0:
		return false
	case n <= 3:
		return true
	case n <= 5:
		return allEqual(d)
	}
	return false
}

// Centre lays the centre of a laid bundle. One: crown and tape are its diameter.
// Two to five equal: crown 2, 2.1547, 2.4142, 2.7013 diameters, tape d·(n+π)/π;
// five take a rod of 0.7013 d. Two or three unequal touch one another: smallest
// enclosing circle and hull. Anything else a file may hold is grouped as tightly
// as Pack can.
func Centre(d []unit.Millimetre) Group {
	n := len(d)
	if n >= 2 && n <= 5 && allEqual(d) {
		g := ringGroup(n, d[0])
		if n == 5 {
			g.Rod = unit.Millimetre(RodOfFive) * d[0]
		}
		return g
	}
	return Pack(d)
}

func allEqual(d []unit.Millimetre) bool {
	for _, x := range d {
		if x != d[0] {
			return false
		}
	}
	return true
}

// ringGroup sets n equal circles in a ring that touch one another.
func ringGroup(n int, d unit.Millimetre) Group {
	R := float64(d) / 2 / math.Sin(math.Pi/float64(n))
	g := Group{Over: unit.Millimetre(2*R) + d, Tape: d * unit.Millimetre((float64(n)+math.Pi)/math.Pi)}
	for i := range n {
		s, c := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		g.X, g.Y = append(g.X, unit.Millimetre(R*c)), append(g.Y, unit.Millimetre(R*s))
	}
	return g
}

// BuiltUp is the smallest crown on which n components of diameter d close at
// lift 0 with lay length ratio × over: what a taped or sleeved single must be
// built up to. For n = 7 and 8 at ratio 12: 1.336 d and 1.653 d.
func BuiltUp(n int, d unit.Millimetre, ratio unit.Ratio) unit.Millimetre {
	if n < 3 || d <= 0 {
		return 0
	}
	f := &fitter{ratio: float64(ratio), dmax: float64(d), mean: float64(d), equal: true, d: make([]float64, n)}
	lo, hi := 0.0, float64(d)*float64(n)
	for range 200 {
		mid := (lo + hi) / 2
		if mid <= lo || mid >= hi {
			break
		}
		f.b, f.c = mid, mid
		if f.sum(mid/2) <= twoPi {
			hi = mid
		} else {
			lo = mid
		}
	}
	return unit.Millimetre(hi)
}
