package outline

import (
	"math"

	"contralay/model/unit"
)

// Along is a text that may lie along a run.
type Along struct {
	Wide, High unit.Millimetre
	Clear      unit.Millimetre   // from the centre line to the edge of the text
	Stations   []unit.Millimetre // where its middle may be, the best first
}

// PutAlong places a text along a line, so that it is read from below or from the right, and takes
// its place: at is the left end of its lower edge. ok is false where it has room nowhere, or where
// the line is not straight over the length of the text.
func (f *Field) PutAlong(l Line, t Along) (at Point, heading unit.Degree, ok bool) {
	for _, station := range t.Stations {
		if station < t.Wide/2 || station > l.Length()-t.Wide/2 {
			continue
		}
		middle, heading := l.At(station)
		from, a := l.At(station - t.Wide/2)
		_, b := l.At(station + t.Wide/2)
		if math.Abs(float64(a-b)) > 1e-6 || math.Abs(float64(from.To(middle)-t.Wide/2)) > 1e-6 {
			continue
		}
		if turned := math.Remainder(float64(heading), 360); turned > 90.001 || turned <= -90+1e-3 {
			heading += 180
		}
		for _, side := range []unit.Millimetre{1, -1} {
			axis := middle.Away(heading+90, side*(t.Clear+t.High/2))
			in := max(0, t.Wide-t.High) / 2
			g := segment{a: axis.Away(heading, -in), b: axis.Away(heading, in), width: t.High}
			if !f.clearOf(g) {
				continue
			}
			n := len(f.all)
			f.Line(straightTo(g.a, g.b), g.width)
			for k := n; k < len(f.all); k++ {
				f.all[k].text = true
			}
			return axis.Away(heading, -t.Wide/2).Away(heading-90, t.High/2), heading, true
		}
	}
	return Point{}, 0, false
}

// clearOf reports whether nothing comes into a segment with its width.
func (f *Field) clearOf(g segment) bool {
	low, high := g.bounds()
	return f.in(low, high, func(c *cell) bool {
		for _, k := range c.boxes {
			if g.in(f.boxes[k]) {
				return false
			}
		}
		for _, k := range c.segs {
			if o := f.all[k]; g.to(o) < (g.width+o.width)/2-1e-9 {
				return false
			}
		}
		return true
	})
}
