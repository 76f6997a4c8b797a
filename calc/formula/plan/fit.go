package plan

import (
	"math"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

const twoPi = 2 * math.Pi

// fit tests one layer on one bed. What it costs decides how much a search can
// try, so angles are kept per bed and the zig-zag is counted, not laid.
type fit struct {
	d         []float64
	bed       lay.Bed
	how       lay.Laying
	angles    []float64 // θ by largest size, size, size, on this bed, unlifted
	known     []bool    // by largest size
	offAngles []float64 // by largest size, size, size: see farthest
	offKnown  []bool
	off       []float64 // by size, size: scratch of lifted
	gauge     lay.Gauge
	list      []unit.Millimetre
}

func newFit(d []float64, ratio unit.Ratio) fit {
	n := len(d)
	return fit{d: d, how: lay.Laying{Ratio: ratio}, angles: make([]float64, n*n*n), known: make([]bool, n),
		off: make([]float64, n*n), offAngles: make([]float64, n*n*n), offKnown: make([]bool, n)}
}

// on takes up another bed.
func (f *fit) on(crown, tape float64, how lay.Laying) {
	f.bed, f.how = lay.Bed{Crown: unit.Millimetre(crown), Tape: unit.Millimetre(tape)}, how
	clear(f.known)
	clear(f.offKnown)
}

// layLength is L of a layer that stands on r and whose largest size is m.
func (f *fit) layLength(r float64, m int) float64 {
	if f.how.Lay > 0 {
		return float64(f.how.Lay)
	}
	return float64(f.how.Ratio) * (math.Max(float64(f.bed.Crown), 2*r) + 2*f.d[m] + float64(f.how.Bind))
}

// farthest is θ by size, size of a layer whose largest is m, as far off the bed as its mean could allow.
func (f *fit) farthest(lift float64, m int) []float64 {
	n := len(f.d)
	if !f.offKnown[m] {
		f.offKnown[m] = true
		r := float64(f.bed.Tape)/2 + lift*f.d[m]
		L := unit.Millimetre(f.layLength(r, m))
		for i := 0; i <= m; i++ {
			for j := 0; j <= i; j++ {
				t := float64(lay.NeighbourAngle(unit.Millimetre(f.d[i]), unit.Millimetre(f.d[j]), unit.Millimetre(r), L))
				f.offAngles[(m*n+i)*n+j], f.offAngles[(m*n+j)*n+i] = t, t
			}
		}
	}
	return f.offAngles[m*n*n:]
}

// theta is θ of two sizes side by side on the bed, in a layer whose largest is m.
func (f *fit) theta(m, i, j int) float64 {
	n := len(f.d)
	if !f.known[m] {
		f.known[m] = true
		r := float64(f.bed.Tape) / 2
		L := unit.Millimetre(f.layLength(r, m))
		for i := 0; i <= m; i++ {
			for j := 0; j <= i; j++ {
				t := float64(lay.NeighbourAngle(unit.Millimetre(f.d[i]), unit.Millimetre(f.d[j]), unit.Millimetre(r), L))
				f.angles[(m*n+i)*n+j], f.angles[(m*n+j)*n+i] = t, t
			}
		}
	}
	return f.angles[(m*n+i)*n+j]
}

// zigzag adds up θ round a layer of n components in zig-zag, cnt of each size; theta is by size, size.
//
// With the components numbered thin to thick from 0, zig-zag sets side by side
// those whose numbers add up to n − 2, those that add up to n, the first and the
// last, and where n is even the middle two.
func zigzag(cnt []int, n int, theta []float64) float64 {
	k := len(cnt)
	total := pairs(cnt, n, n-2, 0, theta) + pairs(cnt, n, n, 1, theta) + theta[place(cnt, 0)*k+place(cnt, n-1)]
	if n%2 == 0 {
		total += theta[place(cnt, n/2-1)*k+place(cnt, n/2)]
	}
	return total
}

// pairs adds up θ of those whose numbers from p on add up to sum.
func pairs(cnt []int, n, sum, p int, theta []float64) float64 {
	total, k := 0.0, len(cnt)
	i, j := 0, k-1
	endI, startJ := cnt[0], n-cnt[j] // places of size i end before endI, those of j start there
	for p < sum-p {
		q := sum - p
		for p >= endI {
			i++
			endI += cnt[i]
		}
		for q < startJ {
			j--
			startJ -= cnt[j]
		}
		run := min(endI-p, q-startJ+1, (q-p+1)/2)
		total += float64(run) * theta[i*k+j]
		p += run
	}
	return total
}

// place is the size of the component of a number.
func place(cnt []int, p int) int {
	i := 0
	for ; p >= cnt[i]; i++ {
		p -= cnt[i]
	}
	return i
}

// sum is Σθ of the layer, unlifted; the sizes are lo to hi, n in all.
func (s *stacking) sum(cnt []int, lo, hi, n int) float64 {
	f := &s.fit
	if lo == hi {
		return float64(n) * f.theta(hi, hi, hi)
	}
	if s.loses(lo, hi) {
		s.effort -= laidEffort
		return float64(f.gauge.Turn(s.list(cnt, 0, 0), f.bed, f.how, 0))
	}
	f.theta(hi, hi, hi)
	return zigzag(cnt, n, f.angles[hi*len(f.d)*len(f.d):])
}

// loses reports whether a thin one may vanish between two thick ones: then only
// the laying itself knows the angle.
func (s *stacking) loses(lo, hi int) bool { return s.mayLose && s.d[lo] < 0.2501*s.d[hi] }

// far reports whether a layer whose Σθ on its bed is sum takes more than a turn, and clearly so, at the most it
// may stand off: θ falls no faster than 1/r, whatever the sizes and the lay.
func (s *stacking) far(sum float64, hi int) bool {
	r := float64(s.fit.bed.Tape) / 2
	return sum*r > 1.03*twoPi*(1+1e-9)*(r+s.lift*s.d[hi]) && !s.mayLose
}

// lifted is Σθ of the layer at the most it may stand off its bed.
func (s *stacking) lifted(cnt []int, lo, hi, n int) float64 {
	f := &s.fit
	if s.loses(lo, hi) {
		s.effort -= laidEffort
		return float64(f.gauge.Turn(s.list(cnt, 0, 0), f.bed, f.how, unit.Ratio(s.lift)))
	}
	// On a mean as large as the thickest it takes the least: where that is too much, so is any.
	if most := f.farthest(s.lift, hi); lo != hi {
		if sum := zigzag(cnt, n, most); sum > 1.001*twoPi {
			return sum
		}
	}
	sum := 0.0
	for i, k := range cnt {
		sum += float64(k) * s.d[i]
	}
	r := float64(f.bed.Tape)/2 + s.lift*sum/float64(n)
	L := unit.Millimetre(f.layLength(r, hi))
	angle := func(i, j int) float64 {
		return float64(lay.NeighbourAngle(unit.Millimetre(s.d[i]), unit.Millimetre(s.d[j]), unit.Millimetre(r), L))
	}
	if lo == hi {
		return float64(n) * angle(hi, hi)
	}
	k := len(cnt)
	for i := lo; i <= hi; i++ {
		for j := lo; j <= i && cnt[i] > 0; j++ {
			if cnt[j] > 0 {
				t := angle(i, j)
				f.off[i*k+j], f.off[j*k+i] = t, t
			}
		}
	}
	return zigzag(cnt, n, f.off)
}

// state is how a layer fits.
type state struct {
	open float64 // share left open; 0 where it stands off its bed
	shut bool    // it closes within the lift
	full bool    // nor would it with anything more in it
}

// fits says how cnt lies on the bed.
func (s *stacking) fits(cnt []int, lo, hi, n int) state {
	if n < 3 {
		return state{open: 1, shut: true}
	}
	sum := s.sum(cnt, lo, hi, n)
	if sum <= twoPi {
		return state{open: math.Max(1-sum/twoPi, 1e-12), shut: true}
	}
	if s.far(sum, hi) {
		return state{full: true}
	}
	sum = s.lifted(cnt, lo, hi, n)
	// One more takes far more room than a longer lay or a larger mean diameter
	// gives back, which the small margin covers; one that may be lost takes none.
	return state{shut: sum <= twoPi+1e-12, full: sum > 1.03*twoPi && (!s.mayLose || sum > 1.5*twoPi)}
}

// fillers is the fewest fillers of the layer's thinnest size that bring its open
// share to limit and keep its lift; ok is false where none do within free.
// open is what st says of the layer without any.
func (s *stacking) fillers(st state, cnt []int, lo, hi, n int, limit float64, free int) (f int, open float64, ok bool) {
	if st.open == 0 || s.noFiller || st.open <= limit {
		return 0, st.open, st.shut
	}
	// No pair takes more than two of the thickest, so fewer cannot do.
	f = max(1, int(math.Ceil(twoPi*(1-limit)/s.fit.theta(hi, hi, hi)-1e-9))-n)
	defer func(k int) { cnt[lo] = k }(cnt[lo])
	cnt[lo] += f
	for ; f <= free; f++ {
		st = s.fits(cnt, lo, hi, n+f)
		if st.open == 0 || st.open <= limit {
			return f, st.open, st.shut
		}
		cnt[lo]++
	}
	return f, 0, false
}
