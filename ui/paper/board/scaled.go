package board

import (
	"math"
	"slices"
	"strconv"

	"contralay/calc/query/drawing"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/paper/plot"
)

// scales are those that a drawing in small may have: what a person can multiply by in the head.
var scales = []float64{1, 2, 2.5, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100}

// words is what the words beside an end take of a page, mm.
const words unit.Millimetre = 24

// Scaled is how a harness is drawn on a page with so much room, mm: at the largest of a few round scales
// at which it fits with the words beside its ends.
func Scaled(d *drawing.Drawing, wide, high unit.Millimetre, sys unit.System) Options {
	size := d.High.Minus(d.Low)
	need := math.Max(float64(size.X/(wide-2*words)), float64(size.Y/(high-words)))
	for _, s := range scales {
		if s >= need {
			return Options{Scale: 1 / s, Size: 3.2, Sys: sys}
		}
	}
	return Options{Scale: 1 / math.Ceil(need), Size: 3.2, Sys: sys}
}

// Page is a harness to scale on an upright page with so much room, mm, read from its side where that
// makes it larger, with its scale and a bar below it. What has to be known about it stands in the notes.
func Page(s *sheet.Sheet, wide, high unit.Millimetre, sys unit.System) (*plot.Sheet, []drawing.Note) {
	d := drawing.Of(s)
	if len(d.Branches) == 0 {
		return nil, nil
	}
	o, turned := Scaled(&d, wide, high, sys), false
	if side := Scaled(&d, high, wide, sys); side.Scale > o.Scale {
		o, turned = side, true
	}
	room := plot.Point{X: wide, Y: high}
	if turned {
		room = plot.Point{X: high, Y: wide}
	}
	o.Scale = 1 / larger(larger(1/o.Scale)) // words may take less room than they were given, or more
	out := Draw(s, &d, o)
	for range 6 {
		if size := out.Box.High.Minus(out.Box.Low); size.X <= room.X && size.Y+9 <= room.Y {
			break
		}
		o.Scale = 1 / next(1/o.Scale)
		out = Draw(s, &d, o)
	}
	caption(out, o)
	if turned {
		out = out.Turned()
	}
	return out, d.Notes
}

// Small is a harness in small, to know it by, within so much room, mm: its outline
// with the ids of its ends where they have room; nil where it has no branch.
func Small(s *sheet.Sheet, wide, high unit.Millimetre) *plot.Sheet {
	d := drawing.Of(s)
	if len(d.Branches) == 0 {
		return nil
	}
	const size, room = 3.2, 14 // of the words, and what they take at each side, mm
	span := d.High.Minus(d.Low)
	o := Options{Size: size, Small: true,
		Scale: math.Min(float64((wide-2*room)/max(1, span.X)), float64((high-3*size)/max(1, span.Y)))}
	out := Draw(s, &d, o)
	var taken []plot.Box
	for k := range d.Ends {
		e := &d.Ends[k]
		text := plot.Shape{Layer: plot.TextLayer, Size: size, Text: e.ID}
		at := e.At.Times(o.Scale).Away(e.Heading, e.FrontMM*unit.Millimetre(o.Scale)+2)
		c := plot.Point{}.Away(e.Heading, 1) // the text lies beyond the end, the way that it heads
		text.Middle = plot.Point{X: at.X + text.Width()*(c.X-1)/2, Y: at.Y + size*0.72*(c.Y-1)/2}
		box := text.Bounds()
		if slices.ContainsFunc(taken, box.Meets) {
			continue
		}
		taken = append(taken, box)
		out.Add(text)
	}
	for k := range out.Shapes {
		b := out.Shapes[k].Bounds()
		out.Box = out.Box.And(b.Low).And(b.High)
	}
	return out
}

// next is the next smaller scale.
func next(scale float64) float64 {
	for _, s := range scales {
		if s > scale+1e-9 {
			return s
		}
	}
	return scale * 1.25
}

// larger is the next larger scale.
func larger(scale float64) float64 {
	for k := len(scales) - 1; k >= 0; k-- {
		if scales[k] < scale-1e-9 {
			return scales[k]
		}
	}
	return scale
}

// caption writes the scale below a drawing, with a bar of 100 or 500 mm, or of 5 or 20 in, of the harness.
func caption(out *plot.Sheet, o Options) {
	bars := [2]unit.Millimetre{100, 500}
	if o.Sys == unit.Inch {
		bars = [2]unit.Millimetre{5 * unit.MillimetrePerInch, 20 * unit.MillimetrePerInch}
	}
	bar := bars[0]
	if float64(bar)*o.Scale < 20 {
		bar = bars[1]
	}
	low := plot.Point{X: out.Box.Low.X + 3, Y: out.Box.Low.Y - 4}
	end := low.Plus(plot.Point{X: bar * unit.Millimetre(o.Scale)})
	out.Way(plot.Frame, heavy, low, end)
	for _, p := range []plot.Point{low, end} {
		out.Way(plot.Frame, thin, p.Away(90, -1.2), p.Away(90, 1.2))
	}
	says := o.Sys.Length(bar) + " " + o.Sys.Name() + " of the harness. Scale 1:" + strconv.FormatFloat(math.Round(10/o.Scale)/10,
		'f', -1, 64) + ", lengths in " +
		o.Sys.Name() + ". The full-size drawing is a file of its own."
	out.Write(plot.Frame, end.Plus(plot.Point{X: 3, Y: -1.1}), 3.2, false, says)
	out.Box.Low.Y = low.Y - 3
	out.Box.High.X = max(out.Box.High.X, end.X+3+textWide(says, 3.2)+3)
}
