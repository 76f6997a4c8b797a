package board

import (
	"math"
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

// captionHigh is what the scale and its bar take below a drawing, mm.
const captionHigh unit.Millimetre = 9

// Page is a harness to scale on an upright page with so much room, mm, its longest way across the page or up it,
// whichever makes it larger; its words are upright. Its scale and a bar stand below it. What has to be known about it
// stands in the notes.
func Page(s *sheet.Sheet, wide, high unit.Millimetre, sys unit.System) (*plot.Sheet, []drawing.Note) {
	d := drawing.Of(s)
	if len(d.Branches) == 0 {
		return nil, nil
	}
	room := plot.Point{X: wide, Y: high}
	up := turned(d)
	if Scaled(&up, wide, high, sys).Scale <= Scaled(&d, wide, high, sys).Scale {
		up = d
	}
	out, o := largest(s, &up, room, sys)
	caption(out, o)
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
	return Draw(s, &d, Options{Size: size, Small: true,
		Scale: math.Min(float64((wide-2*room)/max(1, span.X)), float64((high-3*size)/max(1, span.Y)))})
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
	says := o.Sys.Length(bar) + " " + o.Sys.Name() + " of the harness. Scale 1:" + strconv.FormatFloat(math.Round(10/o.Scale)/10,
		'f', -1, 64) + ", lengths in " + o.Sys.Name() + ". Full size: a file of its own."
	long := bar * unit.Millimetre(o.Scale)
	left := min(out.Box.Low.X+3, out.Box.Middle().X-(long+3+textWide(says, 3.2))/2) // what is wider than the harness lies below its middle
	low := plot.Point{X: left, Y: out.Box.Low.Y - captionHigh + 5}
	end := low.Plus(plot.Point{X: long})
	out.Way(plot.Frame, heavy, low, end)
	for _, p := range []plot.Point{low, end} {
		out.Way(plot.Frame, thin, p.Away(90, -1.2), p.Away(90, 1.2))
	}
	out.Write(plot.Frame, end.Plus(plot.Point{X: 3, Y: -1.1}), 3.2, false, says)
	out.Box.Low = plot.Point{X: min(out.Box.Low.X, left-3), Y: low.Y - 3}
	out.Box.High.X = max(out.Box.High.X, end.X+3+textWide(says, 3.2)+3)
}
