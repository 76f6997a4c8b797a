package outline

import (
	"math"

	"contralay/model/unit"
)

// Point is a point of the board, mm from the datum.
type Point struct{ X, Y unit.Millimetre }

// Plus is a point moved by another.
func (p Point) Plus(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Minus is where a point lies seen from another.
func (p Point) Minus(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Times is a point as far again from the datum.
func (p Point) Times(f float64) Point {
	return Point{p.X * unit.Millimetre(f), p.Y * unit.Millimetre(f)}
}

// To is the distance of two points.
func (p Point) To(q Point) unit.Millimetre {
	return unit.Millimetre(math.Hypot(float64(q.X-p.X), float64(q.Y-p.Y)))
}

// Away is the point at a distance in a direction.
func (p Point) Away(heading unit.Degree, far unit.Millimetre) Point {
	s, c := math.Sincos(float64(heading) * math.Pi / 180)
	switch { // a quarter turn is one, so that what is square is drawn square
	case math.Mod(float64(heading), 180) == 0:
		s = 0
	case math.Mod(float64(heading), 90) == 0:
		c = 0
	}
	return Point{p.X + far*unit.Millimetre(c), p.Y + far*unit.Millimetre(s)}
}

// Piece is a straight or an arc of a centre line.
type Piece struct {
	From    Point
	Heading unit.Degree     // at From
	Length  unit.Millimetre // along it
	Radius  unit.Millimetre // 0: straight; + turns left, - right
}

// At is the point at a station of the piece, mm from its start, and the heading there.
func (p Piece) At(station unit.Millimetre) (Point, unit.Degree) {
	if p.Radius == 0 {
		return p.From.Away(p.Heading, station), p.Heading
	}
	turn := unit.Degree(float64(station/p.Radius) * 180 / math.Pi)
	chord := 2 * p.Radius * unit.Millimetre(math.Sin(float64(turn)*math.Pi/360))
	return p.From.Away(p.Heading+turn/2, chord), p.Heading + turn
}

// Centre is the middle of an arc.
func (p Piece) Centre() Point { return p.From.Away(p.Heading+90, p.Radius) }

// Turn is how far it turns, + to the left.
func (p Piece) Turn() unit.Degree {
	if p.Radius == 0 {
		return 0
	}
	return unit.Degree(float64(p.Length/p.Radius) * 180 / math.Pi)
}

// Line is a centre line, piece after piece.
type Line []Piece

// Length is how long the line is, mm.
func (l Line) Length() (sum unit.Millimetre) {
	for _, p := range l {
		sum += p.Length
	}
	return sum
}

// At is the point at a station, mm from the start of the line, and the heading there. A station
// before the start or past the end is the start or the end.
func (l Line) At(station unit.Millimetre) (Point, unit.Degree) {
	if len(l) == 0 {
		return Point{}, 0
	}
	station = max(0, station)
	for k, p := range l {
		if station <= p.Length || k == len(l)-1 {
			return p.At(min(station, p.Length))
		}
		station -= p.Length
	}
	return Point{}, 0
}

// Part is the line from one station to another.
func (l Line) Part(from, to unit.Millimetre) Line {
	var out Line
	at := unit.Millimetre(0)
	for _, p := range l {
		a, b := max(from-at, 0), min(to-at, p.Length)
		at += p.Length
		if b <= a {
			continue
		}
		q := p
		q.From, q.Heading = p.At(a)
		q.Length = b - a
		out = append(out, q)
	}
	return out
}

// Back is the line from its end to its start.
func (l Line) Back() Line {
	out := make(Line, 0, len(l))
	for k := len(l) - 1; k >= 0; k-- {
		p := l[k]
		end, heading := p.At(p.Length)
		out = append(out, Piece{From: end, Heading: heading + 180, Length: p.Length, Radius: -p.Radius})
	}
	return out
}

// Beside is the line at a distance to its left; to its right where that is negative. An arc whose
// radius is smaller than the distance becomes a corner.
func (l Line) Beside(left unit.Millimetre) Line {
	out := make(Line, 0, len(l))
	for _, p := range l {
		q := p
		q.From = p.From.Away(p.Heading+90, left)
		if p.Radius != 0 {
			r := p.Radius - left
			if r*p.Radius <= 0 {
				continue
			}
			q.Radius, q.Length = r, p.Length*r/p.Radius
		}
		out = append(out, q)
	}
	return out
}

// Times is the line at a scale.
func (l Line) Times(scale float64) Line {
	out := make(Line, len(l))
	for k, p := range l {
		p.From = p.From.Times(scale)
		p.Length, p.Radius = p.Length*unit.Millimetre(scale), p.Radius*unit.Millimetre(scale)
		out[k] = p
	}
	return out
}

// Points are the line as corners, none further from it than near, mm.
func (l Line) Points(near unit.Millimetre) []Point {
	var out []Point
	for _, p := range l {
		n := 1
		if p.Radius != 0 {
			step := 2 * math.Acos(max(0, 1-float64(near/unit.Millimetre(math.Abs(float64(p.Radius))))))
			n = max(1, min(720, int(math.Ceil(math.Abs(float64(p.Turn()))*math.Pi/180/step))))
		}
		if len(out) == 0 || out[len(out)-1].To(p.From) > 1e-6 {
			out = append(out, p.From)
		}
		for k := 1; k <= n; k++ {
			at, _ := p.At(p.Length * unit.Millimetre(float64(k)/float64(n)))
			out = append(out, at)
		}
	}
	return out
}
