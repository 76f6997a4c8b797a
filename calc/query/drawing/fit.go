package drawing

import (
	"math"

	"contralay/calc/formula/outline"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// fitted lays the tree, and breaks the longest straights until it fits the board, or a page.
func fitted(s *sheet.Sheet, t outline.Tree, d *Drawing) outline.Plan {
	wide, high := min(longest, s.H.Board.WidthMM.Or(longest)), min(longest, s.H.Board.HeightMM.Or(longest))
	p := outline.Lay(t)
	for range 2 * len(t.Runs) {
		low, upper := within(p)
		way, more := unit.Degree(0), upper.X-low.X-wide
		if up := upper.Y - low.Y - high; up > max(more, 0) {
			way, more = 90, up
		}
		if more <= 0 {
			return p
		}
		if !shorten(t, p, d, way, more) {
			d.note("drawing", "The drawing is "+mm(upper.X-low.X)+" x "+mm(upper.Y-low.Y)+" mm and does not fit on "+
				mm(wide)+" x "+mm(high)+" mm, however it is broken. Bend it, or let branches leave at other angles")
			return p
		}
		p = outline.Lay(t)
	}
	return p
}

// within is what the lines of a plan lie within.
func within(p outline.Plan) (low, high Point) {
	first := true
	for _, l := range p.Lines {
		for _, at := range l.Points(1) {
			if first {
				low, high, first = at, at, false
			}
			low = Point{X: min(low.X, at.X), Y: min(low.Y, at.Y)}
			high = Point{X: max(high.X, at.X), Y: max(high.Y, at.Y)}
		}
	}
	return low, high
}

// leastLeft is the least of a straight that stays where it is broken, mm: enough to see its
// beginning, its end, and that something is left out.
const leastLeft unit.Millimetre = 250

// shorten takes some mm out of the longest straight that runs about a way; a run is broken once.
func shorten(t outline.Tree, p outline.Plan, d *Drawing, way unit.Degree, more unit.Millimetre) bool {
	best, from, long := -1, unit.Millimetre(0), leastLeft
	for i, l := range p.Lines {
		if d.Branches[i].Break.Set || !d.Branches[i].Measured {
			continue
		}
		at := unit.Millimetre(0)
		for _, piece := range l {
			along := math.Abs(math.Cos(float64(piece.Heading-way) * math.Pi / 180))
			if piece.Radius == 0 && along > 0.9 && piece.Length > long {
				best, from, long = i, at, piece.Length
			}
			at += piece.Length
		}
	}
	if best < 0 {
		return false
	}
	out := min(more/0.9, long-leastLeft+1)
	at := from + (long-out)/2 // whole millimetres stay on both sides as far as they go
	d.Branches[best].Break = model.Some(Break{at, at + out})
	r := &t.Runs[best]
	r.Length, r.Out = r.Length-out, out
	bends := append([]outline.Bend(nil), r.Bends...)
	for k := range bends {
		if bends[k].At >= at+out {
			bends[k].At -= out
		}
	}
	r.Bends = bends
	return true
}
