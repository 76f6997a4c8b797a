package outline

import (
	"math"

	"contralay/model/unit"
)

// segment is a straight bit of a run, as it is tested against others.
type segment struct {
	a, b  Point
	run   int
	width unit.Millimetre
	text  bool // it is a text, over which no line leads
}

// box is what a segment lies within, with its width and room all round.
func (s segment) box(room unit.Millimetre) (low, high Point) {
	m := room + s.width
	return Point{min(s.a.X, s.b.X) - m, min(s.a.Y, s.b.Y) - m}, Point{max(s.a.X, s.b.X) + m, max(s.a.Y, s.b.Y) + m}
}

// bounds are what a segment lies within, with its width.
func (s segment) bounds() (low, high Point) { return s.box(0) }

func (s segment) touches(p Point) bool { return s.a.To(p) < 1e-6 || s.b.To(p) < 1e-6 }

// cross is the area that a point lies to the left of a way from one to another, twice.
func cross(a, b, p Point) float64 {
	return float64(b.X-a.X)*float64(p.Y-a.Y) - float64(b.Y-a.Y)*float64(p.X-a.X)
}

// meets reports whether two segments cross or touch.
func (s segment) meets(o segment) bool {
	d1, d2 := cross(o.a, o.b, s.a), cross(o.a, o.b, s.b)
	d3, d4 := cross(s.a, s.b, o.a), cross(s.a, s.b, o.b)
	return (d1 > 0) != (d2 > 0) && (d3 > 0) != (d4 > 0)
}

// to is the distance of two segments, mm between their middles.
func (s segment) to(o segment) unit.Millimetre {
	if s.meets(o) {
		return 0
	}
	return min(s.far(o.a), s.far(o.b), o.far(s.a), o.far(s.b))
}

// far is the distance of a point from a segment.
func (s segment) far(p Point) unit.Millimetre {
	dx, dy := float64(s.b.X-s.a.X), float64(s.b.Y-s.a.Y)
	long := dx*dx + dy*dy
	if long == 0 {
		return s.a.To(p)
	}
	t := (float64(p.X-s.a.X)*dx + float64(p.Y-s.a.Y)*dy) / long
	t = math.Max(0, math.Min(1, t))
	return p.To(Point{s.a.X + unit.Millimetre(t*dx), s.a.Y + unit.Millimetre(t*dy)})
}

// ofLine is a line as segments.
func ofLine(l Line, run int, width unit.Millimetre) stiff {
	points := l.Points(0.5)
	out := stiff{}
	for k := 1; k < len(points); k++ {
		out.add(segment{a: points[k-1], b: points[k], run: run, width: width})
	}
	return out
}

func (s *stiff) add(g segment) {
	low, high := g.bounds()
	if len(s.segs) == 0 {
		s.low, s.high = low, high
	}
	s.low = Point{min(s.low.X, low.X), min(s.low.Y, low.Y)}
	s.high = Point{max(s.high.X, high.X), max(s.high.Y, high.Y)}
	s.segs = append(s.segs, g)
}

// with is what is there with a stiff piece hung on it at a place in a heading.
func (s stiff) with(piece stiff, at Point, heading unit.Degree) stiff {
	sin, cos := math.Sincos(float64(heading) * math.Pi / 180)
	turn := func(p Point) Point {
		x, y := float64(p.X), float64(p.Y)
		return Point{at.X + unit.Millimetre(x*cos-y*sin), at.Y + unit.Millimetre(x*sin+y*cos)}
	}
	for _, g := range piece.segs {
		g.a, g.b = turn(g.a), turn(g.b)
		s.add(g)
	}
	return s
}

// apart reports whether the boxes of two are further from each other than some room.
func apart(a, b stiff, room unit.Millimetre) bool {
	return len(b.segs) == 0 || a.low.X-room > b.high.X || b.low.X-room > a.high.X || a.low.Y-room > b.high.Y || b.low.Y-room > a.high.Y
}

// crossings are the runs whose centre lines meet anywhere but at a place of both: where they
// leave it, the first hundredth of them, at most 1 mm, is not looked at.
func crossings(t Tree, lines []Line) [][2]int {
	var out [][2]int
	whole := make([]stiff, len(lines))
	for i, l := range lines {
		whole[i] = ofLine(l, i, 0)
	}
	for i := range lines {
		for k := i + 1; k < len(lines); k++ {
			if apart(whole[i], whole[k], 0) {
				continue
			}
			a, b := whole[i], whole[k]
			if place := shared(t.Runs[i], t.Runs[k]); place >= 0 {
				a, b = ofLine(leaving(lines[i], t.Runs[i], place), i, 0), ofLine(leaving(lines[k], t.Runs[k], place), k, 0)
			}
			if meet(a, b) {
				out = append(out, [2]int{i, k})
			}
		}
	}
	return out
}

func shared(a, b Run) int {
	switch {
	case a.From == b.From || a.From == b.To:
		return a.From
	case a.To == b.From || a.To == b.To:
		return a.To
	}
	return -1
}

func leaving(l Line, r Run, place int) Line {
	long := l.Length()
	off := min(long/100, 1)
	if r.From == place {
		return l.Part(off, long)
	}
	return l.Part(0, long-off)
}

// meet reports whether two lines come within a millionth of a millimetre of each other.
func meet(a, b stiff) bool {
	for _, x := range a.segs {
		low, high := x.bounds()
		for _, y := range b.segs {
			l, h := y.bounds()
			if low.X > h.X || l.X > high.X || low.Y > h.Y || l.Y > high.Y {
				continue
			}
			if x.to(y) < 1e-6 {
				return true
			}
		}
	}
	return false
}
