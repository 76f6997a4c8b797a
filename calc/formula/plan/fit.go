package plan

import (
	"math"

	"contralay/calc/formula/lay"
	"contralay/calc/formula/plan/ring"
	"contralay/model/unit"
)

const twoPi = 2 * math.Pi

// fit tests one layer on one bed: by the angles of its sizes, and where one may be lost by laying it.
type fit struct {
	ring.Fit
	gauge lay.Gauge
	list  []unit.Millimetre
}

// sum is Σθ of the layer, unlifted; the sizes are lo to hi, n in all.
func (s *stacking) sum(cnt []int, lo, hi, n int) float64 {
	if s.loses(lo, hi) {
		s.effort -= laidEffort
		return float64(s.fit.gauge.Turn(s.list(cnt, 0, 0), s.fit.Bed, s.fit.How, 0))
	}
	return s.fit.Sum(cnt, lo, hi, n)
}

// loses reports whether a thin one may vanish between two thick ones: then only
// the laying itself knows the angle.
func (s *stacking) loses(lo, hi int) bool { return s.mayLose && s.d[lo] < 0.2501*s.d[hi] }

// fullBeyond is the Σθ, at the most a layer may stand off its bed, from which nothing more goes into it. One more
// takes far more room than a longer lay or a larger mean diameter gives back, which the small margin covers; one
// that may be lost takes none.
const fullBeyond = 1.03 * twoPi

// far reports whether a layer whose Σθ on its bed is sum is certainly full.
func (s *stacking) far(sum float64, hi int) bool {
	return !s.mayLose && s.fit.Beyond(sum, fullBeyond, s.lift, hi)
}

// full reports whether a layer is full whose Σθ is sum at the most it may stand off its bed.
func (s *stacking) full(sum float64) bool { return sum > fullBeyond && (!s.mayLose || sum > 1.5*twoPi) }

// lifted is Σθ of the layer at the most it may stand off its bed.
func (s *stacking) lifted(cnt []int, lo, hi, n int) float64 {
	if s.loses(lo, hi) {
		s.effort -= laidEffort
		return float64(s.fit.gauge.Turn(s.list(cnt, 0, 0), s.fit.Bed, s.fit.How, unit.Ratio(s.lift)))
	}
	return s.fit.Off(cnt, lo, hi, n, s.lift)
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
	return state{shut: sum <= twoPi+1e-12, full: s.full(sum)}
}

// fillers is the fewest fillers of the layer's thinnest size that bring its open
// share to limit and keep its lift; ok is false where none do within free.
// open is what st says of the layer without any.
func (s *stacking) fillers(st state, cnt []int, lo, hi, n int, limit float64, free int) (f int, open float64, ok bool) {
	if st.open == 0 || s.noFiller || st.open <= limit {
		return 0, st.open, st.shut
	}
	// No pair takes more than two of the thickest, so fewer cannot do.
	f = max(1, int(math.Ceil(twoPi*(1-limit)/s.fit.Theta(hi, hi, hi)-1e-9))-n)
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
