package shape

import (
	"cmp"
	"math"
	"slices"
	"unicode/utf8"

	"contralay/ui/draw"
)

// slot is a place for a name beside the drawing.
type slot struct {
	col, row int
	x, y     float64 // its middle from that of the drawing, pixels, y upward
	angle    float64
}

// clear is how many pixels a name keeps from the drawing.
const clear = 0.5

// slots are the places for names of n characters round a drawing: at the left and the right of
// each line, and side by side where a line lies over it or under it. They follow each other
// clockwise from the top.
func slots(f field, reach float64, n int) []slot {
	rx, ry := reach*f.kx, reach*f.ky
	var out []slot
	put := func(col, row int) {
		if col < 0 || col+n > f.w {
			return
		}
		s := slot{col: col, row: row, x: float64(col) + float64(n)/2 - f.cx, y: f.cy - 2*float64(row) - 1}
		s.angle = clockwise(s.x, s.y)
		out = append(out, s)
	}
	for row := range f.h / 2 {
		near := 0.0 // how far the line lies from the middle, at its nearest
		if top, bottom := f.cy-2*float64(row), f.cy-2*float64(row)-2; bottom > 0 {
			near = bottom
		} else if top < 0 {
			near = -top
		}
		if near >= ry {
			many := (f.w + 1) / (n + 1)
			from := (f.w - many*(n+1) + 1) / 2
			for k := range many {
				put(from+k*(n+1), row)
			}
			continue
		}
		half := rx * math.Sqrt(1-near*near/(ry*ry))
		for col := int(math.Floor(f.cx-half-clear)) - n; col >= 0; col -= n + 1 {
			put(col, row)
		}
		for col := int(math.Ceil(f.cx + half + clear)); col+n <= f.w; col += n + 1 {
			put(col, row)
		}
	}
	slices.SortFunc(out, func(a, b slot) int {
		return cmp.Or(cmp.Compare(a.angle, b.angle), cmp.Compare(a.row, b.row), cmp.Compare(a.col, b.col))
	})
	return out
}

// bundle is the radius that holds every disc. Names may lie on the sheath, never on a disc.
func bundle(s draw.Section) float64 {
	r := float64(s.BuiltMM) / 2
	for _, d := range s.Discs {
		if d.Usable() {
			r = max(r, math.Hypot(float64(d.X), float64(d.Y))+float64(d.D)/2)
		}
	}
	return r
}

// roundIt gives each name of a layer a place round the drawing, in the order in which the discs
// lie, so that the distances from where each disc points are least. far is the longest of them, in
// pixels; ok is false where there are more names than places.
func roundIt(s draw.Section, f field, g group, texts []string, free func(slot) bool) (out []number, far float64, ok bool) {
	n := 0
	for _, t := range texts {
		n = max(n, utf8.RuneCountInString(t))
	}
	reach := bundle(s)
	places := slices.DeleteFunc(slots(f, reach, n), func(s slot) bool { return free != nil && !free(s) })
	if len(places) < len(texts) {
		return nil, 0, false
	}
	order := make([]int, len(g.discs))
	angles := make([]float64, len(g.discs))
	for k, i := range g.discs {
		order[k], angles[k] = k, clockwise(float64(s.Discs[i].X), float64(s.Discs[i].Y))
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(angles[a], angles[b]) })
	order, places = cut(order, angles, places)
	taken, far := match(order, angles, places, reach*f.kx+clear, reach*f.ky+clear)
	for k, at := range order {
		p := places[taken[k]]
		out = append(out, number{disc: g.discs[at], text: texts[at], col: p.col, row: p.row, round: true})
	}
	return out, far, true
}

// cut opens the round of discs and of places where the discs leave the widest gap, so that both
// can be gone through from one end to the other.
func cut(order []int, angles []float64, places []slot) ([]int, []slot) {
	widest, at := -1.0, 0
	for k := range order {
		before := angles[order[(k+len(order)-1)%len(order)]]
		gap := angles[order[k]] - before
		if k == 0 {
			gap += 2 * math.Pi
		}
		if gap > widest+1e-9 {
			widest, at = gap, k
		}
	}
	start := math.Mod(angles[order[at]]-widest/2+2*math.Pi, 2*math.Pi)
	k := 0
	for k < len(places) && places[k].angle < start {
		k++
	}
	return append(slices.Clone(order[at:]), order[:at]...), append(slices.Clone(places[k:]), places[:k]...)
}

// match gives each name a place, both in their order, so that the sum of the squares of the
// distances is least: by the table of the best sums for the first names and places.
func match(order []int, angles []float64, places []slot, rx, ry float64) (taken []int, far float64) {
	n, m := len(order), len(places)
	off := func(k, j int) float64 {
		a := angles[order[k]]
		dx, dy := places[j].x-rx*math.Sin(a), places[j].y-ry*math.Cos(a)
		return dx*dx + dy*dy
	}
	best := make([]float64, (n+1)*(m+1))
	at := func(k, j int) int { return k*(m+1) + j }
	for k := 1; k <= n; k++ {
		best[at(k, k-1)] = math.Inf(1)
		for j := k; j <= m; j++ {
			best[at(k, j)] = min(best[at(k, j-1)], best[at(k-1, j-1)]+off(k-1, j-1))
		}
	}
	taken = make([]int, n)
	for k, j := n, m; k > 0; j-- {
		if best[at(k, j)] < best[at(k, j-1)] {
			k--
			taken[k] = j - 1
			far = max(far, math.Sqrt(off(k, j-1)))
		}
	}
	return taken, far
}
