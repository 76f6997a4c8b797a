package draw

import (
	"math"

	"contralay/model/unit"
)

// ZoomFactor is how much larger a zoomed picture is than the whole, unless the
// discs that touch the chosen one would then be cut. Chosen here, no source: at
// 46×20 cells it lets 130 discs show all their labels round the chosen one.
const ZoomFactor = 2.2

// touching is how far apart two discs may be, as a share of the chosen one's
// diameter, and still count as its neighbours when the window is sized.
const touching = 0.15

// Zoomed returns the part of a section round the disc with this id. The window
// is centred on that disc; discs whose centre lies outside it are left out and
// listed in OutOfView, in the order of the section. Coordinates are unchanged.
// An id that is not there gives the section back whole.
func Zoomed(s Section, id string) Section {
	at := -1
	for i, d := range s.Discs {
		if d.ID == id && d.usable() {
			at = i
			break
		}
	}
	if at < 0 {
		return s
	}
	c := s.Discs[at]
	need := float64(c.D) / 2
	for i, d := range s.Discs {
		if i == at || !d.usable() {
			continue
		}
		if dist(c, d)-float64(c.D+d.D)/2 <= touching*float64(c.D) {
			need = max(need, dist(c, d)+float64(d.D)/2)
		}
	}
	r := min(max(s.reach()/ZoomFactor, need), s.reach())

	z := s
	z.View = View{X: c.X, Y: c.Y, D: unit.Millimetre(2 * r)}
	z.Discs, z.OutOfView = nil, append([]string(nil), s.OutOfView...)
	for _, d := range s.Discs {
		if d.usable() && dist(c, d) <= r {
			z.Discs = append(z.Discs, d)
		} else {
			z.OutOfView = append(z.OutOfView, d.ID)
		}
	}
	return z
}

// dist is the distance between two centres, in mm.
func dist(a, b Disc) float64 { return math.Hypot(float64(a.X-b.X), float64(a.Y-b.Y)) }
