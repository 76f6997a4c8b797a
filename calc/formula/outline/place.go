package outline

import (
	"math"

	"contralay/model/unit"
)

// Frame is what a text takes: an upright box, mm.
type Frame struct {
	Of         Point           // what the text belongs to
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
	Bound Box // where it is not empty, no text leaves it as long as there is room within
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
			g := segment{a.Plus(b.Minus(a).Times(float64(i) / float64(n))), a.Plus(b.Minus(a).Times(float64(i+1) / float64(n))), 0, width}
			low, high := g.box(0)
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
var turnsTried = [...]unit.Degree{0, 25, -25, 50, -50, 75, -75, 180, 155, -155, 130, -130, 105, -105}

// Put places a text: as near as there is room, in the direction nearest to the one preferred, and
// takes its box. led is whether it lies so far off that a line should lead to it. It always finds a
// place, since a drawing ends somewhere.
func (f *Field) Put(t Frame) (box Box, led bool) {
	step := max(t.High/2, 1)
	for n := 0; ; n++ {
		far := t.Clear + step*unit.Millimetre(n)
		for _, turn := range turnsTried {
			b := t.box(t.Toward+turn, far)
			inside := f.Bound == Box{} || n > 400 ||
				b.Low.X >= f.Bound.Low.X && b.Low.Y >= f.Bound.Low.Y && b.High.X <= f.Bound.High.X && b.High.Y <= f.Bound.High.Y
			if inside && f.Free(b) {
				f.Take(b)
				return b, n > 1
			}
		}
		if n > 400 {
			step *= 1.2
		}
	}
}

// box is the box of a text in a direction, its edge so far off.
func (t Frame) box(toward unit.Degree, far unit.Millimetre) Box {
	s, c := math.Sincos(float64(toward) * math.Pi / 180)
	middle := Point{t.Of.X + unit.Millimetre(c)*(far+t.Wide/2), t.Of.Y + unit.Millimetre(s)*(far+t.High/2)}
	half := Point{t.Wide / 2, t.High / 2}
	return Box{middle.Minus(half), middle.Plus(half)}
}

// And is a box with a point in it.
func (b Box) And(p Point) Box {
	return Box{Point{min(b.Low.X, p.X), min(b.Low.Y, p.Y)}, Point{max(b.High.X, p.X), max(b.High.Y, p.Y)}}
}
