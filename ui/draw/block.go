package draw

import "math"

// Half blocks: the upper and the lower half of a cell are two pixels, which are
// nearly square.
const (
	upperHalf = '\u2580'
	lowerHalf = '\u2584'
)

// A fill is smaller than its disc, so that discs that touch stay apart: by half
// a pixel, which leaves one pixel between two, or by this share of the radius
// where that is more. Chosen by looking at the pictures.
const (
	gapRows  = 0.25
	gapShare = 0.08
)

// fillRadius is the radius of the fill of a disc of radius r, both in rows. The
// smallest discs keep half.
func fillRadius(r float64) float64 { return max(r-max(gapRows, gapShare*r), r/2) }

// fill paints the discs, two pixels a cell. A pixel belongs to a disc if its
// middle lies on it.
func fill(c *Canvas, s Section, f frame) {
	px := make([]Ink, c.W*f.h*2)
	for _, d := range s.Discs {
		if !d.usable() {
			continue
		}
		ink := InkClass + Ink(d.class())
		if d.Flagged {
			ink = InkFlag
		}
		paint(px, c.W, f, d, ink)
	}
	for row := range f.h {
		for col := range c.W {
			up, low := px[2*row*c.W+col], px[(2*row+1)*c.W+col]
			switch {
			case up == InkNone && low == InkNone:
			case up == low:
				c.put(col, row, ' ', MakeStyle(InkNone, up, false))
			case low == InkNone:
				c.put(col, row, upperHalf, MakeStyle(up, InkNone, false))
			case up == InkNone:
				c.put(col, row, lowerHalf, MakeStyle(low, InkNone, false))
			default:
				c.put(col, row, upperHalf, MakeStyle(up, low, false))
			}
		}
	}
}

// paint sets the pixels of one disc. Pixel row q has its middle at cell
// coordinate (q − 0.5)/2.
func paint(px []Ink, w int, f frame, d Disc, ink Ink) {
	x0, y0 := f.at(float64(d.X), float64(d.Y))
	ry := fillRadius(float64(d.D) / 2 * f.k)
	rx := ry / f.aspect
	for q := max(int(2*(y0-ry)), 0); q <= min(int(2*(y0+ry))+1, 2*f.h-1); q++ {
		dy := ((float64(q)-0.5)/2 - y0) / ry
		if dy*dy > 1 {
			continue
		}
		half := rx * math.Sqrt(1-dy*dy)
		from := max(int(math.Ceil(x0-half-tie)), 0)
		to := min(int(math.Floor(x0+half+tie)), w-1)
		for col := from; col <= to; col++ {
			px[q*w+col] = ink
		}
	}
}
