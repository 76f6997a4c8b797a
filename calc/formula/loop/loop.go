// Package loop is the service loop behind a connector: how far it bows out of the bundle
// inside its boot, how long one fits, how often a contact can be made anew from it, and
// what a boot that turns takes of it.
package loop

import (
	"math"

	"contralay/model/unit"
)

// A wire that is longer than its span by a loop is laid in bows that leave and meet the
// bundle along it: with n of them
//
//	y = h/2 · (1 − cos 2πnx/s),  A = πnh/s:  extra/s = mean √(1 + A² sin²) − 1
//	the least radius on its crowns: R = s² / (2π²n²h)
//
// Derived: the arc length of that line.

// steep is A for an extra by the span. The mean over a whole period by equal steps is exact
// to all the digits it has.
func steep(share float64) float64 {
	lo, hi := 0.0, 10.0
	for range 40 {
		mid := (lo + hi) / 2
		if extra(mid) < share {
			lo = mid
		} else {
			hi = mid
		}
	}
	return hi
}

func extra(a float64) float64 {
	const n = 16 // over a quarter of the period, which the others repeat
	sum := (1 + math.Sqrt(1+a*a)) / 2
	for k := 1; k < n; k++ {
		sin := math.Sin(math.Pi / 2 * float64(k) / n)
		sum += math.Sqrt(1 + a*a*sin*sin)
	}
	return sum/n - 1
}

// Bow is how far off the straight a loop stands that is laid in so many bows, in mm, and
// the radius it is bent to there. 0 for no loop, no span or no bow.
func Bow(loop, span unit.Millimetre, bows int) (off, radius unit.Millimetre) {
	if !(loop > 0) || !(span > 0) || bows < 1 || loop > most*span {
		return 0, 0
	}
	h := steep(float64(loop/span)) * float64(span) / (math.Pi * float64(bows))
	r := float64(span) * float64(span) / (2 * math.Pi * math.Pi * float64(bows*bows) * h)
	return unit.Millimetre(h), unit.Millimetre(r)
}

// most is the loop, by the span, beyond which it is no loop but a coil.
const most = 3

// Fit is the fewest bows, two at least, that keep a loop within the room beside the bundle,
// and how far those stand off; false where the crowns would then be bent below a radius, or
// there is no room.
func Fit(loop, span, room, radius unit.Millimetre) (bows int, off unit.Millimetre, ok bool) {
	if !(loop > 0) {
		return 0, 0, true
	}
	one, r := Bow(loop, span, 1)
	if !(one > 0) || !(room > 0) {
		return 0, 0, false
	}
	bows = max(2, int(math.Ceil(min(float64(one/room), 1000))))
	off = one / unit.Millimetre(bows)
	return bows, off, off <= room && r/unit.Millimetre(bows) >= radius
}

// Longest is the longest loop that Fit takes, 0 where none does.
func Longest(span, room, radius unit.Millimetre) unit.Millimetre {
	lo, hi := 0.0, most*float64(span)
	if !(hi > 0) {
		return 0
	}
	for range 30 {
		mid := (lo + hi) / 2
		if _, _, ok := Fit(unit.Millimetre(mid), span, room, radius); ok {
			lo = mid
		} else {
			hi = mid
		}
	}
	return unit.Millimetre(lo)
}

// OnceMM is what making a contact anew takes of a wire: its crimp barrel, its strip and a
// hair. Common practice, no source.
const OnceMM unit.Millimetre = 8

// Again is how often a contact can be made anew from a loop. AC 43.13-1B ¶ 11-118 asks for
// two.
func Again(loop unit.Millimetre) int {
	if !(loop >= OnceMM) {
		return 0
	}
	return int(min(float64(loop/OnceMM), 1000))
}

// Turn is what a bend of so many degrees takes of the wires on its outer side beyond those
// on the centre line, in mm: the angle times half the diameter of the bundle, whatever the
// radius. Derived.
func Turn(over unit.Millimetre, deg unit.Degree) unit.Millimetre {
	if !(over > 0) || !(deg > 0) {
		return 0
	}
	return over / 2 * unit.Millimetre(float64(deg)*math.Pi/180)
}
