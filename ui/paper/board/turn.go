package board

import (
	"slices"

	"contralay/calc/formula/outline"
	"contralay/calc/query/drawing"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/paper/plot"
)

// turned is a harness that lies a quarter turn to the left of what it did, so that its longest way goes up an upright
// page. Only the harness is turned: its words are written as on any page.
func turned(d drawing.Drawing) drawing.Drawing {
	turn := func(p drawing.Point) drawing.Point { return drawing.Point{X: -p.Y, Y: p.X} }
	d.Branches, d.Ends, d.Joints = slices.Clone(d.Branches), slices.Clone(d.Ends), slices.Clone(d.Joints)
	d.Sleeves, d.Pegs = slices.Clone(d.Sleeves), slices.Clone(d.Pegs)
	for i := range d.Branches {
		b := &d.Branches[i]
		b.Line = slices.Clone(b.Line)
		for k := range b.Line {
			b.Line[k].From, b.Line[k].Heading = turn(b.Line[k].From), b.Line[k].Heading+90
		}
	}
	for k := range d.Ends {
		d.Ends[k].At, d.Ends[k].Heading = turn(d.Ends[k].At), d.Ends[k].Heading+90
	}
	for k := range d.Joints {
		d.Joints[k].At = turn(d.Joints[k].At)
	}
	for k := range d.Sleeves {
		d.Sleeves[k].At, d.Sleeves[k].Heading = turn(d.Sleeves[k].At), d.Sleeves[k].Heading+90
	}
	for k := range d.Pegs {
		d.Pegs[k].At = turn(d.Pegs[k].At)
	}
	d.Low, d.High = drawing.Point{X: -d.High.Y, Y: d.Low.X}, drawing.Point{X: -d.Low.Y, Y: d.High.X}
	return d
}

// largest is a harness in a room at the largest of the round scales at which it fits with its words, and that scale.
func largest(s *sheet.Sheet, d *drawing.Drawing, room plot.Point, sys unit.System) (*plot.Sheet, Options) {
	o := Scaled(d, room.X, room.Y, sys)
	o.Scale = 1 / larger(1/o.Scale) // words may take less room than they were given, or more
	out := Draw(s, d, o)
	for range 6 {
		if size := out.Box.High.Minus(out.Box.Low); size.X <= room.X && size.Y+captionHigh <= room.Y {
			break
		}
		o.Scale = 1 / next(1/o.Scale)
		out = Draw(s, d, o)
	}
	return out, o
}

// names writes the ids of ends in small, each beyond its end, beside it where that has no room; one without room near
// its end is left out.
func (c *canvas) names() {
	const far = 3
	for k := range c.d.Ends {
		e := &c.d.Ends[k]
		text := plot.Shape{Layer: plot.TextLayer, Size: c.Size, Text: e.ID}
		wide := text.Width()
		f := frame(c.to(e.At).Away(e.Heading, c.mm(e.FrontMM)), wide, c.Size*0.9, 1, e.Heading)
		box, ok := c.near(f, far)
		if !ok {
			continue
		}
		c.field.Take(box)
		text.Middle = plot.Point{X: box.Low.X, Y: box.Low.Y + 0.12*c.Size}
		c.add(text)
	}
}

// near is where a text has room within so many mm of its point, the nearest first.
func (c *canvas) near(f outline.Frame, far unit.Millimetre) (plot.Box, bool) {
	for more := unit.Millimetre(0); more <= far; more++ {
		for _, turn := range []unit.Degree{0, 20, -20, 40, -40, 60, -60, 80, -80} {
			way := f.Of.Away(f.Toward+turn, f.Clear+more)
			u := plot.Point{}.Away(f.Toward+turn, 1)
			middle := way.Plus(plot.Point{X: u.X * f.Wide / 2, Y: u.Y * f.High / 2})
			half := plot.Point{X: f.Wide / 2, Y: f.High / 2}
			if b := (plot.Box{Low: middle.Minus(half), High: middle.Plus(half)}); c.field.Free(b) {
				return b, true
			}
		}
	}
	return plot.Box{}, false
}
