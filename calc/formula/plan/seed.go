package plan

import (
	"slices"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

// centreMost is how many components a centre may hold.
const centreMost = 5

// seed offers every centre: one; two to five equal; two or three unequal; a
// single one built up; or what is held there, as it is.
func (s *stacking) seed() {
	clear(s.take)
	s.now = &node{n: make([]int, len(s.kinds))}
	clear(s.cnt)
	if h := s.held[0]; h != nil {
		copy(s.cnt, h.n)
		s.centre(h)
		if h.locked {
			return
		}
	}
	s.subsets(0, func() bool { return s.centre(s.held[0]) })
}

// centre offers what cnt holds as the centre; full says that no more could be.
func (s *stacking) centre(h *held) (full bool) {
	lo, hi, n := s.span(s.cnt)
	if n == 0 {
		return false
	}
	locked := h != nil && h.locked
	if !locked {
		if n > centreMost || (lo != hi && (n > 3 || s.centres < UnequalCentres)) {
			return true
		}
	}
	if s.centreN > 0 && n != s.centreN && !locked {
		return n >= s.centreN
	}
	ds := s.list(s.cnt, 0, 0)
	if locked && h.fillers > 0 && (n != 5 || lo != hi) {
		ds = s.list(s.cnt, h.fillers, h.fillerMM)
	}
	bind := 0.0
	if h != nil {
		bind = float64(h.how.Bind)
	}
	g := lay.Centre(ds)
	l := &label{crown: float64(g.Over) + bind, tape: float64(g.Tape) + bind, centreN: n, pick: pick{n: slices.Clone(s.cnt)}}
	l.lumpy, l.spread = s.lumps(lo, hi)
	switch {
	case g.Rod > 0:
		l.fillers, l.fillerMM = 1, float64(g.Rod)
	case locked && h.fillers > 0:
		l.fillers, l.fillerMM = h.fillers, float64(h.fillers)*h.fillerMM
	}
	l.pick.fillers, l.pick.fillerMM = l.fillers, l.fillerMM
	if s.only == AnyCentre || locked || s.only == OnlyUnequal && lo != hi {
		s.offerCentre(l)
	}
	if n == 1 && s.centres >= BuiltCentres && bind == 0 && !locked {
		for _, places := range []int{7, 8} {
			up := float64(lay.BuiltUp(places, ds[0], s.rules.LayRatio))
			b := *l
			b.crown, b.tape, b.fillers, b.fillerMM = up, up, 1, up-float64(ds[0])
			b.pick.builtMM, b.pick.fillers, b.pick.fillerMM = up, 1, b.fillerMM
			s.push(&b, s.now.n, s.take)
		}
	}
	return n == centreMost
}

func (s *stacking) offerCentre(l *label) {
	if spares, ok := s.complete(s.now.n, s.take); ok && s.mayEnd(0) {
		s.finish(l, spares)
	}
	s.push(l, s.now.n, s.take)
}

// span is the thinnest and thickest size of counts, and how many there are.
func (s *stacking) span(cnt []int) (lo, hi, n int) {
	lo = -1
	for i, k := range cnt {
		if k > 0 {
			if lo < 0 {
				lo = i
			}
			hi, n = i, n+k
		}
	}
	return max(lo, 0), hi, n
}

// list is counts as diameters, thin to thick, with fillers where they belong.
func (s *stacking) list(cnt []int, fillers int, fillerMM float64) []unit.Millimetre {
	out := s.fit.list[:0]
	for i, k := range cnt {
		for ; fillers > 0 && fillerMM <= s.d[i]; fillers-- {
			out = append(out, unit.Millimetre(fillerMM))
		}
		for range k {
			out = append(out, unit.Millimetre(s.d[i]))
		}
	}
	for ; fillers > 0; fillers-- {
		out = append(out, unit.Millimetre(fillerMM))
	}
	s.fit.list = out
	return out
}
