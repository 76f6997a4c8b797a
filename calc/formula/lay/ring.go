package lay

import (
	"math"

	"contralay/model/unit"
)

// Bed is what a layer lies on.
type Bed struct {
	Crown unit.Millimetre // over the high spots
	Tape  unit.Millimetre // convex hull ÷ π; never above Crown
}

// Laying is how a layer is laid.
type Laying struct {
	Ratio unit.Ratio      // lay length ÷ over
	Lay   unit.Millimetre // lay length where it is fixed; 0: Ratio × over
	Bind  unit.Millimetre // what tape or thread adds to the diameter
}

// Ring is one layer as it lies.
type Ring struct {
	Inner  unit.Millimetre   // r: radius the layer stands on, ≥ Tape/2 of the bed
	Lift   unit.Ratio        // (r − b/2) ÷ mean diameter
	Proud  unit.Millimetre   // r − b/2
	Gap    unit.Ratio        // open share of the circumference; 1 for one or two
	Over   unit.Millimetre   // over the high spots
	Tape   unit.Millimetre   // convex hull ÷ π
	Lay    unit.Millimetre   // lay length
	Radii  []unit.Millimetre // winding radius of each component, in the order given
	Angles []unit.Radian     // where each lies, from the first, rising
	Loss   unit.Ratio        // lay loss of the outermost component
	Angle  unit.Degree       // its lay angle
	Closes bool              // false where the lay is too short for any radius
}

// lostBelow is the size ratio from which a small component can vanish between
// two that touch over it: a quarter on a flat bed (1/√d = 1/√D + 1/√D), less on
// any round one. A little more, so that rounding never skips the search.
const lostBelow = 0.2501

// Lay fits components of the given diameters, in the order they are laid, on a
// bed. Diameters > 0, bed.Tape > 0. The ring closes at the smallest r with
// Σθ ≤ 2π; its diameter is max(crown, 2r) + 2·d_max + bind. For the tape diameter
// the components stand on max(r, crown/2) and share the slack evenly.
func Lay(d []unit.Millimetre, bed Bed, how Laying) Ring {
	n := len(d)
	if n == 0 || bed.Tape <= 0 {
		return Ring{Over: bed.Crown + how.Bind, Tape: bed.Tape + how.Bind, Gap: 1, Loss: 1, Closes: true}
	}
	f := newFitter(d, bed, how)
	r, sum, ok := f.close()
	over := f.over(r)
	lay := f.lay(r)
	out := Ring{
		Inner: unit.Millimetre(r), Proud: unit.Millimetre(r - f.b/2), Lift: unit.Ratio((r - f.b/2) / f.mean),
		Gap: 1, Over: unit.Millimetre(over), Lay: unit.Millimetre(lay), Closes: ok,
		Radii: make([]unit.Millimetre, n), Angles: make([]unit.Radian, n),
	}
	if n > 2 {
		out.Gap = unit.Ratio(math.Max(0, 1-sum/(2*math.Pi)))
	}
	stand := math.Max(r, f.c/2)
	top := 0.0
	for i, x := range f.d {
		R := stand + x/2
		out.Radii[i] = unit.Millimetre(R)
		top = math.Max(top, R)
	}
	f.place(r, sum, out.Angles)
	out.Tape = unit.Millimetre(f.tape(stand, out.Angles)) + how.Bind
	out.Loss = TakeUp(unit.Millimetre(top), out.Lay)
	out.Angle = LayAngle(unit.Millimetre(top), out.Lay)
	return out
}

// fitter holds one closing problem in plain numbers; it never leaves the package.
type fitter struct {
	d                  []float64 // in laid order
	b, c, ratio, fixed float64
	bind, dmax, mean   float64
	equal, mayLose     bool
	lost               chains
	ds                 []disc // scratch of tape
	hull               hull
}

func newFitter(d []unit.Millimetre, bed Bed, how Laying) *fitter {
	f := &fitter{}
	f.set(d, bed, how)
	return f
}

// set takes up another closing problem and keeps the scratch.
func (f *fitter) set(d []unit.Millimetre, bed Bed, how Laying) {
	f.d = f.d[:0]
	f.b, f.c, f.ratio, f.fixed, f.bind = float64(bed.Tape), float64(bed.Crown), float64(how.Ratio), float64(how.Lay), float64(how.Bind)
	f.dmax, f.lost = 0, chains{}
	dmin, sum := math.MaxFloat64, 0.0
	for _, v := range d {
		x := float64(v)
		f.d = append(f.d, x)
		dmin, f.dmax = math.Min(dmin, x), math.Max(f.dmax, x)
		sum += x
	}
	f.mean = sum / float64(len(d))
	f.equal = dmin == f.dmax
	f.mayLose = dmin < lostBelow*f.dmax
}

func (f *fitter) over(r float64) float64 { return math.Max(f.c, 2*r) + 2*f.dmax + f.bind }

func (f *fitter) lay(r float64) float64 {
	if f.fixed > 0 {
		return f.fixed
	}
	return f.ratio * f.over(r)
}

// sum is Σθ round the ring at inner radius r; where a small component is lost
// between two that touch over it, the two count and it takes no angle.
func (f *fitter) sum(r float64) float64 {
	n, lay := len(f.d), f.lay(r)
	if f.equal {
		return float64(n) * angle(f.dmax/2, f.dmax/2, r, lay)
	}
	if !f.mayLose {
		total, pd, pe, pv := 0.0, -1.0, -1.0, 0.0
		for i, x := range f.d {
			y := f.d[(i+1)%n]
			if !(x == pd && y == pe) && !(x == pe && y == pd) {
				pd, pe, pv = x, y, angle(x/2, y/2, r, lay)
			}
			total += pv
		}
		return total
	}
	f.longest(r, lay)
	return f.lost.best[n]
}

// close finds the smallest r ≥ b/2 with Σθ ≤ 2π and returns it with Σθ there.
// ok is false where no radius closes, which only a fixed lay or a ratio that is far too short can do.
func (f *fitter) close() (r, sum float64, ok bool) {
	r = f.b / 2
	if len(f.d) < 3 {
		return r, 0, true
	}
	sum = f.sum(r)
	if sum <= 2*math.Pi {
		return r, sum, true
	}
	lo, hi := r, r
	step := f.mean / 16
	limit := r + f.mean*float64(len(f.d))
	for {
		hi += step
		if sum = f.sum(hi); sum <= 2*math.Pi {
			break
		}
		if hi > limit {
			return hi, sum, false
		}
		lo, step = hi, step*2
	}
	for range 60 {
		mid := (lo + hi) / 2
		if mid <= lo || mid >= hi || hi-lo < 1e-11*hi {
			break
		}
		if s := f.sum(mid); s <= 2*math.Pi {
			hi, sum = mid, s
		} else {
			lo = mid
		}
	}
	return hi, sum, true
}

// place writes where each component lies: neighbours at their angle plus an
// equal share of what is open; a lost one midway between the two over it. Where
// the ring does not close, all are squeezed into one turn.
func (f *fitter) place(r, sum float64, out []unit.Radian) {
	n := len(f.d)
	if n < 3 || f.equal {
		for i := range out {
			out[i] = unit.Radian(2 * math.Pi * float64(i) / float64(n))
		}
		return
	}
	lay := f.lay(r)
	if !f.mayLose {
		slack, squeeze := share(sum, n)
		at := 0.0
		for i := range f.d {
			out[i] = unit.Radian(at)
			at += angle(f.d[i]/2, f.d[(i+1)%n]/2, r, lay)*squeeze + slack
		}
		return
	}
	f.longest(r, lay)
	chain := []int{n}
	for k := n; k > 0; k = f.lost.from[k] {
		chain = append(chain, f.lost.from[k])
	}
	slack, squeeze := share(f.lost.best[n], len(chain)-1)
	s, at, shift := f.largest(), 0.0, 0.0
	pos := make([]float64, n+1)
	for c := len(chain) - 1; c > 0; c-- {
		i, k := chain[c], chain[c-1]
		step := (f.lost.best[k]-f.lost.best[i])*squeeze + slack
		for j := i; j < k; j++ {
			pos[j] = at + step*float64(j-i)/float64(k-i)
		}
		at += step
	}
	if s != 0 {
		shift = pos[n-s]
	}
	for j := range n {
		a := math.Mod(pos[j]-shift+4*math.Pi, 2*math.Pi)
		if i := (s + j) % n; i == 0 {
			out[i] = 0
		} else {
			out[i] = unit.Radian(a)
		}
	}
}

// share is what each of n gaps gets of the open angle, or by how much angles that
// add up to more than a turn are squeezed.
func share(sum float64, n int) (slack, squeeze float64) {
	if sum > twoPi {
		return 0, twoPi / sum
	}
	return (twoPi - sum) / float64(n), 1
}

func (f *fitter) tape(stand float64, at []unit.Radian) float64 {
	n := len(f.d)
	if f.equal && n >= 3 {
		R := stand + f.dmax/2
		s, c := math.Sincos(math.Pi / float64(n))
		if R*c+f.dmax/2 >= f.b/2 {
			return 2*float64(n)*R*s/math.Pi + f.dmax
		}
	}
	f.ds = f.ds[:0]
	for i, x := range f.d {
		s, c := math.Sincos(float64(at[i]))
		R := stand + x/2
		f.ds = append(f.ds, disc{R * c, R * s, x / 2})
	}
	return f.hull.ring(f.ds, f.b/2) / math.Pi
}
