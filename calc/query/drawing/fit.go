package drawing

import (
	"cmp"
	"math"
	"slices"

	"contralay/calc/formula/outline"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// fitted lays the tree, and breaks the longest straights until it fits the board, or a page.
func fitted(s *sheet.Sheet, t outline.Tree, d *Drawing) outline.Plan {
	wide, high := min(longest, s.H.Board.WidthMM.Or(longest)), min(longest, s.H.Board.HeightMM.Or(longest))
	p := outline.Lay(t)
	if t.Datum < 0 {
		t.Datum = p.Datum
	}
	const passes = 12 // each brings it nearer; what is left after so many does not come
	for n := range passes {
		low, upper := within(p)
		way, more := unit.Degree(0), upper.X-low.X-wide
		if up := upper.Y - low.Y - high; up > max(more, 0) {
			way, more = 90, up
		}
		if more <= 0 {
			return p
		}
		if n == passes-1 || !shorten(t, p, d, way, more) {
			d.Large = max(upper.X-low.X, upper.Y-low.Y) > largest
			d.note("drawing", "The drawing is "+mm(upper.X-low.X)+" x "+mm(upper.Y-low.Y)+" mm and does not fit on "+
				mm(wide)+" x "+mm(high)+" mm, however it is broken. Bend it, or let branches leave at other angles")
			return p
		}
		p = outline.Lay(t)
	}
	return p
}

// largest is the most that is drawn at full size, mm: no board is as large (no source).
const largest unit.Millimetre = 50_000

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

// shorten takes some mm out of the longest straights that run about a way, of the branches that lie
// between the two points furthest apart along it; a branch is broken once.
func shorten(t outline.Tree, p outline.Plan, d *Drawing, way unit.Degree, more unit.Millimetre) bool {
	type straight struct {
		run        int
		from, long unit.Millimetre
		along      float64
	}
	var all []straight
	for _, i := range between(t, p, way) {
		if d.Branches[i].Break.Set || !d.Branches[i].Measured {
			continue
		}
		best, at := straight{run: -1, long: leastLeft}, unit.Millimetre(0)
		for _, piece := range p.Lines[i] {
			along := math.Abs(math.Cos(float64(piece.Heading-way) * math.Pi / 180))
			if piece.Radius == 0 && along > 0.3 && piece.Length > best.long {
				best = straight{i, at, piece.Length, along}
			}
			at += piece.Length
		}
		if best.run >= 0 {
			all = append(all, best)
		}
	}
	slices.SortStableFunc(all, func(a, b straight) int { return cmp.Compare(b.long, a.long) })
	for _, c := range all {
		if more <= 0 {
			break
		}
		out := min(more/unit.Millimetre(c.along)+1, c.long-leastLeft)
		more -= out * unit.Millimetre(c.along)
		at := c.from + (c.long-out)/2
		d.Branches[c.run].Break = model.Some(Break{at, at + out})
		r := &t.Runs[c.run]
		r.Length, r.Out = r.Length-out, out
		bends := append([]outline.Bend(nil), r.Bends...)
		for k := range bends {
			if bends[k].At >= at+out {
				bends[k].At -= out
			}
		}
		r.Bends = bends
	}
	return len(all) > 0
}

// between are the runs of the way from the lowest point along a direction to the highest: those that
// lead to one of the two from the datum, and not to both.
func between(t outline.Tree, p outline.Plan, way unit.Degree) []int {
	by := make([]int, t.Places) // of each place, the run that it is reached by
	for k := range by {
		by[k] = -1
	}
	along := func(at Point) unit.Millimetre {
		if way != 0 {
			return at.Y
		}
		return at.X
	}
	low, high := -1, -1
	var least, most unit.Millimetre
	for i, l := range p.Lines {
		far := t.Runs[i].From
		if far == p.Near[i] {
			far = t.Runs[i].To
		}
		by[far] = i
		for _, at := range l.Points(1) {
			v := along(at)
			if low < 0 || v < least {
				low, least = i, v
			}
			if high < 0 || v > most {
				high, most = i, v
			}
		}
	}
	times := map[int]int{}
	for k, i := range []int{low, high} {
		// a run whose near end is the furthest of it all does not lead there
		if end := along(p.Places[p.Near[i]]); end == [2]unit.Millimetre{least, most}[k] {
			i = by[p.Near[i]]
		}
		for ; i >= 0; i = by[p.Near[i]] {
			times[i]++
		}
	}
	var out []int
	for i := range p.Lines {
		if times[i] == 1 {
			out = append(out, i)
		}
	}
	return out
}
