package lay

import (
	"math"

	"contralay/model/unit"
)

// Gauge measures rings laid in zig-zag, one after another, and keeps its scratch,
// for a search that lays thousands. It gives the figures of LayZigZag, to the
// last bit, without where each component lies. Diameters are given thin to thick.
// A zero Gauge is ready; it serves one goroutine.
type Gauge struct {
	f     fitter
	at    []unit.Radian
	order []unit.Millimetre
}

func (g *Gauge) set(up []unit.Millimetre, bed Bed, how Laying) *fitter {
	n := len(up)
	g.order = append(g.order[:0], up...)
	if n >= 3 { // the order of ZigZag, its right side written from the end
		left, right, lo, hi := 1, n-1, 0, n-2
		g.order[0] = up[n-1]
		for small := true; lo <= hi; small = !small {
			for side := 0; side < 2 && lo <= hi; side++ {
				v := up[hi]
				if small {
					v = up[lo]
					lo++
				} else {
					hi--
				}
				if side == 0 {
					g.order[left] = v
					left++
				} else {
					g.order[right] = v
					right--
				}
			}
		}
	} else if n == 2 {
		g.order[0], g.order[1] = up[1], up[0]
	}
	g.f.set(g.order, bed, how)
	return &g.f
}

// Bed is what a ring is for the next one; its Crown is what callipers read.
func (g *Gauge) Bed(up []unit.Millimetre, bed Bed, how Laying) Bed {
	f := g.set(up, bed, how)
	r, sum, _ := f.close()
	g.at = append(g.at[:0], make([]unit.Radian, len(up))...)
	f.place(r, sum, g.at)
	return Bed{Crown: unit.Millimetre(f.over(r)), Tape: unit.Millimetre(f.tape(math.Max(r, f.c/2), g.at)) + how.Bind}
}

// Over is what callipers read over a ring: the cheap half of Bed.
func (g *Gauge) Over(up []unit.Millimetre, bed Bed, how Laying) unit.Millimetre {
	f := g.set(up, bed, how)
	r, _, _ := f.close()
	return unit.Millimetre(f.over(r))
}

// Turn is Σθ round a ring of three or more that stands lift mean diameters off
// its bed: up to 2π it closes there.
func (g *Gauge) Turn(up []unit.Millimetre, bed Bed, how Laying, lift unit.Ratio) unit.Radian {
	f := g.set(up, bed, how)
	return unit.Radian(f.sum(f.b/2 + float64(lift)*f.mean))
}
