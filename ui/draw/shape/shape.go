package shape

import (
	"math"

	"contralay/ui/draw"
)

// form is what a shape looks like.
type form uint8

const (
	disc   form = iota
	ring        // a disc with a round hole
	band        // the part of a disc between two parallel lines
	sector      // the part of a ring between two angles
	wedge       // a triangle
)

// shade is how a shape looks without colour, from the palest.
type shade uint8

const (
	empty shade = iota
	pale
	half
	solid
)

// paint is what a shape is filled with on terminals of every kind.
type paint struct {
	colour draw.Colour
	shade  shade
}

// point is a place in mm, y upward.
type point struct{ x, y float64 }

// shape is one thing to be drawn; lengths in mm, y upward.
type shape struct {
	form   form
	x, y   float64
	r      float64 // of the circle round it
	inside float64 // radius of the hole of a ring or a sector

	normal   point   // of a band: across its lines, of length 1
	from, to float64 // of a band: how far its lines lie from the middle. Of a sector: angles, clockwise from the top
	corners  [3]point

	paint paint
	of    int // disc of the section; none is -1
}

// covers reports whether a point lies on the shape.
func (s *shape) covers(x, y float64) bool {
	if s.form == wedge {
		return s.inWedge(x, y)
	}
	dx, dy := x-s.x, y-s.y
	d2 := dx*dx + dy*dy
	if d2 > s.r*s.r {
		return false
	}
	switch s.form {
	case ring:
		return d2 >= s.inside*s.inside
	case band:
		across := dx*s.normal.x + dy*s.normal.y
		return across >= s.from && across <= s.to
	case sector:
		if d2 < s.inside*s.inside {
			return false
		}
		angle := clockwise(dx, dy)
		return angle >= s.from && angle <= s.to
	}
	return true
}

// How a small round piece lies on a shape.
const (
	partly = iota
	outside
	within
)

// whole says whether a piece of this radius lies on the shape as a whole, or off it; partly where
// that is not plain.
func (s *shape) whole(x, y, radius float64) int {
	if s.form == wedge {
		return partly
	}
	d := math.Hypot(x-s.x, y-s.y)
	switch {
	case d > s.r+radius, d < s.inside-radius:
		return outside
	case s.form == disc && d < s.r-radius, s.form == ring && d < s.r-radius && d > s.inside+radius:
		return within
	}
	return partly
}

func (s *shape) inWedge(x, y float64) bool {
	side := func(a, b point) float64 { return (b.x-a.x)*(y-a.y) - (b.y-a.y)*(x-a.x) }
	c := s.corners
	a, b, d := side(c[0], c[1]), side(c[1], c[2]), side(c[2], c[0])
	return a >= 0 && b >= 0 && d >= 0 || a <= 0 && b <= 0 && d <= 0
}

// bounds are the least and the largest coordinates of a shape.
func (s *shape) bounds() (low, high point) {
	if s.form != wedge {
		return point{s.x - s.r, s.y - s.r}, point{s.x + s.r, s.y + s.r}
	}
	low, high = s.corners[0], s.corners[0]
	for _, c := range s.corners[1:] {
		low.x, low.y = min(low.x, c.x), min(low.y, c.y)
		high.x, high.y = max(high.x, c.x), max(high.y, c.y)
	}
	return low, high
}

// clockwise is the angle of a direction from the top, 0 to 2π.
func clockwise(x, y float64) float64 {
	a := math.Atan2(x, y)
	if a < 0 {
		a += 2 * math.Pi
	}
	return a
}

// polar is a point by its angle from the top and its distance.
func polar(angle, r float64) point { return point{r * math.Sin(angle), r * math.Cos(angle)} }
