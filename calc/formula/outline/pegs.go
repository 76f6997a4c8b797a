package outline

import (
	"math"

	"contralay/model/unit"
)

// Peg is a peg of the board beside a run.
type Peg struct {
	At      Point
	Run     int
	Station unit.Millimetre // along the run, from its From
}

// Apart is how far pegs stand from each other on a straight at most, mm: common practice, no source.
const Apart unit.Millimetre = 150

// airMM is what a peg is clear of the bundle that it holds, mm, so that it can be laid in by hand.
const airMM unit.Millimetre = 0.5

// Pegs are pegs of a diameter beside runs as they are drawn. On a straight they stand by turns
// to the left and to the right, none further than Apart from the next, and half as far from its
// ends; at a bend one stands before it and one behind, on the inside. free gives how much of each
// run is free at its From and at its To: sorted zones, and what is in a connector. A peg that has
// no room on its side stands on the other; where it has none there either, there is none.
func Pegs(lines []Line, widths []unit.Millimetre, peg unit.Millimetre, free func(run int) (from, to unit.Millimetre)) []Peg {
	var f Field
	for i, l := range lines {
		f.Line(l, widths[i]+2*airMM-0.05)
	}
	var out []Peg
	put := func(i int, station unit.Millimetre, side float64) bool {
		at, heading := lines[i].At(station)
		off := unit.Millimetre(side) * (widths[i]/2 + airMM + peg/2)
		p := at.Away(heading+90, off)
		half := Point{peg / 2, peg / 2}
		if !f.disc(p, peg/2) {
			return false
		}
		f.Take(Box{p.Minus(half), p.Plus(half)})
		out = append(out, Peg{p, i, station})
		return true
	}
	for i, l := range lines {
		first, last := free(i)
		end, side, at := l.Length()-last, 1.0, unit.Millimetre(0)
		for k, p := range l {
			from, to := max(at, first), min(at+p.Length, end)
			at += p.Length
			if p.Radius != 0 {
				inside := math.Copysign(1, float64(p.Radius))
				for _, s := range []unit.Millimetre{at - p.Length, at} {
					if s >= first && s <= end {
						put(i, s, inside)
					}
				}
				continue
			}
			if k > 0 && l[k-1].Radius == 0 { // a corner
				inside := math.Copysign(1, float64(p.Heading-l[k-1].Heading))
				for _, s := range []unit.Millimetre{at - p.Length - widths[i] - peg, at - p.Length + widths[i] + peg} {
					if s >= first && s <= end {
						put(i, s, inside)
					}
				}
			}
			long := to - from
			if long < 2*peg {
				continue
			}
			n := max(1, int(math.Ceil(float64(long/Apart))))
			for k := range n {
				s := from + long*unit.Millimetre((float64(k)+0.5)/float64(n))
				if !put(i, s, side) {
					put(i, s, -side)
				}
				side = -side
			}
		}
	}
	return out
}

// disc reports whether nothing lies in a disc.
func (f *Field) disc(p Point, radius unit.Millimetre) bool {
	r := Point{radius, radius}
	return f.in(p.Minus(r), p.Plus(r), func(c *cell) bool {
		for _, k := range c.boxes {
			if f.boxes[k].Near(p).To(p) < radius {
				return false
			}
		}
		for _, k := range c.segs {
			if f.all[k].far(p) < radius+f.all[k].width/2 {
				return false
			}
		}
		return true
	})
}
