package plan

import (
	"math"

	"contralay/calc/formula/lay"
)

// laidEffort is what laying a layer costs beside testing one: about ten to one,
// measured.
const laidEffort = 10

// grow lays every possible next layer on a stack.
func (s *stacking) grow(l *label, nd *node) {
	s.on, s.now = l, nd
	clear(s.take)
	spares, area, thin := s.rest()
	if s.hopeless(l.crown, l.tape, l.fillers, l.lumpy, area, thin, spares) {
		return
	}
	h := s.held[l.layers+1]
	how := lay.Laying{Ratio: s.rules.LayRatio}
	clear(s.cnt)
	if h != nil {
		how.Lay, how.Bind = h.how.Lay, h.how.Bind
		copy(s.cnt, h.n)
	}
	s.fit.Take(l.crown, l.tape, how)
	switch {
	case h != nil && h.locked:
		s.asHeld(h)
		return
	case s.total(s.cnt) > 0: // what is held lies in it, alone or with more
		if s.try() {
			return
		}
	}
	s.subsets(0, s.try)
}

// subsets calls try with every choice of what the node lacks, each once. What try
// calls full is not added to.
func (s *stacking) subsets(from int, try func() (full bool)) {
	for i := from; i < len(s.kinds); i++ {
		k := s.kinds[i]
		if s.now.n[i]+s.take[i] >= k.most {
			continue
		}
		if !s.reached(k.class) {
			return
		}
		s.take[i]++
		s.cnt[k.size]++
		if !try() && s.effort >= 0 {
			s.subsets(i, try)
		}
		s.take[i]--
		s.cnt[k.size]--
	}
}

// reached reports whether every class that runs further is laid.
func (s *stacking) reached(class int) bool {
	for i, k := range s.kinds {
		if k.class >= class {
			return true
		}
		if s.now.n[i]+s.take[i] < k.need {
			return false
		}
	}
	return true
}

// try takes cnt as the next layer: as the last one where everything is laid then,
// and as one with more to come. It reports whether the layer is full.
func (s *stacking) try() (full bool) {
	l := s.on
	s.effort--
	lo, hi, n := s.span(s.cnt)
	st := s.fits(s.cnt, lo, hi, n)
	if st.open == 0 && !st.shut {
		return st.full
	}
	lumpy, spread := s.lumps(lo, hi)
	lumpy += l.lumpy
	spares, done := s.complete(s.now.n, s.take)
	free := s.fillerMost - l.fillers
	bind := float64(s.fit.How.Bind)
	least := l.crown + 2*s.d[hi] + bind
	// Whatever is beaten already at the least it can come to is not laid, which is
	// the costly part.
	if done && s.mayEnd(l.layers+1) && !s.found.beats(least, l.fillers, lumpy, spares) {
		if f, open, ok := s.fillers(st, s.cnt, lo, hi, n, s.gapOut, free); ok && !s.found.beats(least, l.fillers+f, lumpy, spares) {
			s.finish(s.stack(f, s.d[lo], lumpy, spread, s.crown(open, f, lo, least)), spares)
		}
	}
	most, area, thin := s.rest()
	if thin == 0 && most == spares && s.lastHeld <= l.layers+1 {
		return st.full // nothing could follow
	}
	all := area + s.area(s.cnt)
	if s.hopeless(least, l.tape, l.fillers, lumpy, all, thin, most) {
		return st.full
	}
	if f, open, ok := s.fillers(st, s.cnt, lo, hi, n, s.gapIn, free); ok && !s.hopeless(least, l.tape, l.fillers+f, lumpy, all, thin,
		most) {
		next := s.stack(f, s.d[lo], lumpy, spread, s.crown(open, f, lo, least))
		s.lay(next)
		if !s.hopeless(next.crown, next.tape, next.fillers, lumpy, area, thin, most) {
			s.push(next, s.now.n, s.take)
		}
	}
	return st.full
}

// rest is what the node that the layer in hand leads to still lacks: how many
// spares there may be in the end, the sum of d² to come, and the thinnest of it.
// What is held further out is not counted.
func (s *stacking) rest() (spares int, area, thin float64) {
	for i, k := range s.kinds {
		if c := s.now.n[i] + s.take[i]; c < k.need {
			d := s.d[k.size]
			area += float64(k.need-c) * d * d
			if thin == 0 || d < thin {
				thin = d
			}
		}
		spares += max(0, k.most-k.need)
	}
	return spares, area, thin
}

func (s *stacking) area(cnt []int) float64 {
	a := 0.0
	for i, k := range cnt {
		a += float64(k) * s.d[i] * s.d[i]
	}
	return a
}

// crown is over of the layer in hand with its fillers; unlifted it is the least.
func (s *stacking) crown(open float64, f, lo int, least float64) float64 {
	if open > 0 {
		return least
	}
	s.effort -= laidEffort
	return float64(s.fit.gauge.Over(s.list(s.cnt, f, s.d[lo]), s.fit.Bed, s.fit.How))
}

// stack is the label of the layer in hand on the one below; its tape diameter is
// left to lay, for the outermost layer needs none.
func (s *stacking) stack(f int, fillerMM float64, lumpy int, spread, crown float64) *label {
	l, o, n := s.on, s.shelf.label(), s.shelf.ints(len(s.cnt))
	copy(n, s.cnt)
	*o = label{
		crown: crown, fillers: l.fillers + f, fillerMM: l.fillerMM + float64(f)*fillerMM,
		lumpy: lumpy, spread: l.spread + spread, layers: l.layers + 1, centreN: l.centreN, parent: l,
		pick: pick{n: n, fillers: f, fillerMM: fillerMM},
	}
	return o
}

// lay works out what a stack is for the next layer.
func (s *stacking) lay(l *label) {
	s.effort -= laidEffort
	bed := s.fit.gauge.Bed(s.list(l.pick.n, l.pick.fillers, l.pick.fillerMM), s.fit.Bed, s.fit.How)
	l.crown, l.tape = float64(bed.Crown), float64(bed.Tape)
}

// asHeld lays a locked layer as it is, whatever it keeps.
func (s *stacking) asHeld(h *held) {
	lo, hi, n := s.span(s.cnt)
	if n == 0 && h.fillers == 0 {
		return
	}
	lumpy, spread := 0, 0.0
	fillerMM := h.fillerMM
	if n > 0 {
		lumpy, spread = s.lumps(lo, hi)
		if fillerMM <= 0 {
			fillerMM = s.d[lo]
		}
	}
	next := s.stack(h.fillers, fillerMM, s.on.lumpy+lumpy, spread, 0)
	s.lay(next)
	if spares, ok := s.complete(s.now.n, s.take); ok && s.mayEnd(next.layers) {
		s.finish(next, spares)
	}
	s.push(next, s.now.n, s.take)
}

// hopeless reports whether nothing that grows from a stack can enter the front:
// even with no filler more and every spare, some plan found already beats the
// least it can come to.
//
// The least is one layer more of the thinnest to come; and, since discs that lie
// outside a hull lie inside the next one, and of all hulls of one length the
// circle is the largest, tape² grows by at least Σd² from layer to layer.
func (s *stacking) hopeless(crown, tape float64, fillers, lumpy int, area, thin float64, spares int) bool {
	if s.mayLose || s.lift > 1 {
		area = 0 // the laying sets lost and squeezed ones over one another
	}
	return s.found.beats(math.Max(crown+2*thin, math.Sqrt(tape*tape+area)), fillers, lumpy, spares)
}
