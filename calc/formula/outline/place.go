package outline

import (
	"math"

	"contralay/model/unit"
)

// Frame is what a text takes: an upright box, mm.
type Frame struct {
	Of         Point           // what the text belongs to
	Or         []Point         // where else on it the text may begin
	Wide, High unit.Millimetre // of the box
	Clear      unit.Millimetre // how far from Of it begins at least
	Toward     unit.Degree     // where it lies by preference, seen from Of
}

// Box is a box that lies on the drawing.
type Box struct{ Low, High Point }

// Middle is the middle of a box.
func (b Box) Middle() Point { return b.Low.Plus(b.High).Times(0.5) }

// Meets reports whether two boxes share more than an edge.
func (b Box) Meets(o Box) bool {
	return b.Low.X < o.High.X && o.Low.X < b.High.X && b.Low.Y < o.High.Y && o.Low.Y < b.High.Y
}

// Near is the point of a box that is nearest to another.
func (b Box) Near(p Point) Point {
	return Point{max(b.Low.X, min(b.High.X, p.X)), max(b.Low.Y, min(b.High.Y, p.Y))}
}

// Field is a drawing on which texts are placed clear of lines and of each other. The zero value
// is an empty one.
type Field struct {
	cells map[[2]int]*cell
	all   []segment
	boxes []Box
}

type cell struct{ segs, boxes []int }

// cellMM is the side of the squares in which a field looks for what is near.
const cellMM = 80

func (f *Field) in(low, high Point, visit func(*cell) bool) bool {
	if f.cells == nil {
		f.cells = map[[2]int]*cell{}
	}
	at := func(v unit.Millimetre) int { return int(math.Floor(float64(v) / cellMM)) }
	for x := at(low.X); x <= at(high.X); x++ {
		for y := at(low.Y); y <= at(high.Y); y++ {
			if !visit(f.at(x, y)) {
				return false
			}
		}
	}
	return true
}

func (f *Field) at(x, y int) *cell {
	c := f.cells[[2]int{x, y}]
	if c == nil {
		c = &cell{}
		f.cells[[2]int{x, y}] = c
	}
	return c
}

// Line keeps texts off a line and what it is wide.
func (f *Field) Line(l Line, width unit.Millimetre) {
	points := l.Points(0.02)
	for k := 1; k < len(points); k++ {
		a, b := points[k-1], points[k]
		n := max(1, int(math.Ceil(float64(a.To(b))/cellMM))) // long ones in parts, so that their squares are few
		for i := range n {
			g := segment{a: a.Plus(b.Minus(a).Times(float64(i) / float64(n))),
				b: a.Plus(b.Minus(a).Times(float64(i+1) / float64(n))), width: width}
			low, high := g.bounds()
			id := len(f.all)
			f.all = append(f.all, g)
			f.in(low, high, func(c *cell) bool { c.segs = append(c.segs, id); return true })
		}
	}
}

// Take keeps texts off a box.
func (f *Field) Take(b Box) {
	id := len(f.boxes)
	f.boxes = append(f.boxes, b)
	f.in(b.Low, b.High, func(c *cell) bool { c.boxes = append(c.boxes, id); return true })
}

// Free reports whether nothing lies in a box.
func (f *Field) Free(b Box) bool {
	return f.in(b.Low, b.High, func(c *cell) bool {
		for _, k := range c.boxes {
			if f.boxes[k].Meets(b) {
				return false
			}
		}
		for _, k := range c.segs {
			if f.all[k].in(b) {
				return false
			}
		}
		return true
	})
}

// in reports whether a segment with its width comes into a box.
func (s segment) in(b Box) bool {
	low, high := s.box(1e-6) // with its whole width, and more than the rounding of what follows
	if !b.Meets(Box{low, high}) {
		return false
	}
	if p := b.Near(s.a); p == s.a {
		return true
	}
	corners := [4]Point{b.Low, {b.High.X, b.Low.Y}, b.High, {b.Low.X, b.High.Y}}
	for k := range corners {
		if s.to(segment{a: corners[k], b: corners[(k+1)%4]}) < s.width/2 {
			return true
		}
	}
	return false
}

// turnsTried are the directions in which a text is tried, from the one that is preferred.
var turnsTried = [...]unit.Degree{0, 15, -15, 30, -30, 45, -45, 60, -60, 75, -75, 180, 165, -165, 150, -150, 135, -135, 120, -120,
	105, -105,
	90, -90}

// leadMM is what a line that leads to a text takes, mm.
const leadMM = 0.4

// Put places a text: as near as there is room, in the direction nearest to the one preferred, and
// takes its box. of is the point that it lies at, and led whether it lies so far off that a line should
// lead to that; that line goes
// through no other text as long as there is a place near by, and texts to come keep clear of it. It
// always finds a place, since a drawing ends somewhere.
func (f *Field) Put(t Frame) (box Box, of Point, led bool) {
	step := max(t.High/2, 1)
	all := append([]Point{t.Of}, t.Or...)
	for n := 0; ; n++ {
		far := t.Clear + step*unit.Millimetre(n)
		for _, t.Of = range all {
			for _, turn := range turnsTried {
				b := t.box(t.Toward+turn, far)
				if f.Free(b) && (n > 20 || f.open(t, b, n < 2, n > 6)) {
					f.Take(b)
					if n > 1 {
						f.Line(straightTo(b.Near(t.Of), t.Of), leadMM)
					}
					return b, t.Of, n > 1
				}
			}
		}
		if n > 60 {
			step *= 1.2
		}
	}
}

// open reports whether the line from a text to its point goes through no other text and, but where
// it may, over nothing else that is drawn: what lies within reach of the point is its own. Over a
// text that lies close by it may go; nobody needs that line.
func (f *Field) open(t Frame, b Box, close, over bool) bool {
	near := b.Near(t.Of)
	far := near.To(t.Of)
	if far <= t.Clear {
		return true
	}
	g := segment{a: near, b: t.Of, width: leadMM}
	short := segment{a: near, b: near.Plus(t.Of.Minus(near).Times(float64(1 - (t.Clear+leadMM)/far)))}
	low, high := g.bounds()
	return f.in(low, high, func(c *cell) bool {
		for _, k := range c.boxes {
			if !close && g.in(f.boxes[k]) {
				return false
			}
		}
		for _, k := range c.segs {
			if f.all[k].text && !close && g.to(f.all[k]) < f.all[k].width/2 {
				return false
			}
			if !over && short.to(f.all[k]) < f.all[k].width/2 {
				return false
			}
		}
		return true
	})
}

// straightTo is a line from one point to another.
func straightTo(a, b Point) Line {
	heading := math.Atan2(float64(b.Y-a.Y), float64(b.X-a.X)) * 180 / math.Pi
	return Line{{From: a, Heading: unit.Degree(heading), Length: a.To(b)}}
}

// box is the box of a text whose middle lies in a direction, as near as leaves its edge so far off.
func (t Frame) box(toward unit.Degree, far unit.Millimetre) Box {
	s, c := math.Sincos(float64(toward) * math.Pi / 180)
	half := Point{t.Wide / 2, t.High / 2}
	near, most := 0.0, float64(far+t.Wide+t.High)
	for range 12 { // halving: a thousandth of the way is near enough
		mid := (near + most) / 2
		x, y := math.Max(0, math.Abs(mid*c)-float64(half.X)), math.Max(0, math.Abs(mid*s)-float64(half.Y))
		if math.Hypot(x, y) < float64(far) {
			near = mid
		} else {
			most = mid
		}
	}
	middle := Point{t.Of.X + unit.Millimetre(c*most), t.Of.Y + unit.Millimetre(s*most)}
	return Box{middle.Minus(half), middle.Plus(half)}
}

// And is a box with a point in it.
func (b Box) And(p Point) Box {
	return Box{Point{min(b.Low.X, p.X), min(b.Low.Y, p.Y)}, Point{max(b.High.X, p.X), max(b.High.Y, p.Y)}}
}

// Through reports whether a straight from one point to another comes into a box.
func Through(from, to Point, b Box) bool {
	return segment{a: from, b: to, width: 1e-6}.in(b)
}
