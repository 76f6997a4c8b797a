package plan

import (
	"cmp"
	"math"
	"slices"

	"contralay/calc/lay"
	"contralay/model/unit"
)

const twoPi = 2 * math.Pi

// grow lays every possible next layer on a stack.
func (s *search) grow(l *label, have []int, parts []part, add func(*label)) {
	s.tabulate(l)
	after := make([]int, len(have))
next:
	for k := range parts {
		p := &parts[k]
		for i, n := range p.n {
			if after[i] = have[i] + n; after[i] > s.most[i] {
				continue next
			}
		}
		s.effort--
		spares, done := s.complete(after)
		free := s.fillerMost - l.fillers
		lumpy, _ := s.lumps(p.min, p.max)
		// What the layer comes to at least: whatever is beaten already at that need
		// not be laid, which is the costly part.
		least := l.crown + 2*s.d[p.max]
		if done && !s.found.beats(least, l.fillers, l.lumpy+lumpy, spares) {
			if f, ok := s.fillers(l, p, s.gapOut, free); ok && !s.found.beats(least, l.fillers+f, l.lumpy+lumpy, spares) {
				s.finish(s.stack(l, p, f), after)
			}
		}
		if !s.more(after) || s.hopeless(least, l.fillers, l.lumpy+lumpy, after) {
			continue
		}
		if f, ok := s.fillers(l, p, s.gapIn, free); ok && !s.hopeless(least, l.fillers+f, l.lumpy+lumpy, after) {
			add(s.stack(l, p, f))
		}
	}
}

// more reports whether anything could still follow.
func (s *search) more(n []int) bool {
	for i, k := range n {
		if k < s.most[i] {
			return true
		}
	}
	return false
}

// tabulate writes the angles of neighbours on this bed, unlifted, by the largest
// size in the layer (which sets the lay length) and the two neighbours.
func (s *search) tabulate(l *label) {
	n := len(s.d)
	for m := range n {
		L := float64(s.rules.LayRatio) * (l.crown + 2*s.d[m])
		for i := 0; i <= m; i++ {
			for j := 0; j <= i; j++ {
				t := float64(lay.NeighbourAngle(unit.Millimetre(s.d[i]), unit.Millimetre(s.d[j]), unit.Millimetre(l.tape/2), unit.Millimetre(L)))
				s.angles[(m*n+i)*n+j], s.angles[(m*n+j)*n+i] = t, t
			}
		}
	}
}

// fillers is the fewest fillers of the layer's thinnest size that bring its open
// share to limit and keep its lift; ok is false where none do within free.
func (s *search) fillers(l *label, p *part, limit float64, free int) (int, bool) {
	n := len(s.d)
	widest := s.angles[(p.max*n+p.max)*n+p.max]
	f := 0
	if !s.noFiller {
		// No pair takes more than two of the thickest, so fewer cannot do.
		f = max(0, int(math.Ceil(twoPi*(1-limit)/widest-1e-9))-p.count)
	}
	for ; f <= free || f == 0; f++ {
		open, shut := s.open(l, p, f)
		if open == 0 {
			return f, shut
		}
		if s.noFiller || open <= limit {
			return f, true
		}
	}
	return f, false
}

// open is the open share of the layer with f fillers; where that is nothing, shut
// says whether it closes within the lift.
func (s *search) open(l *label, p *part, f int) (share float64, shut bool) {
	if p.count+f < 3 {
		return 1, true
	}
	if s.mayLose {
		// Only lay knows how a small one is lost between two large ones; that costs
		// as much as laying it.
		s.effort -= stackEffort
		bed := lay.Bed{Crown: unit.Millimetre(l.crown), Tape: unit.Millimetre(l.tape)}
		r := lay.LayZigZag(s.list(p.n, f), bed, lay.Laying{Ratio: s.rules.LayRatio})
		if r.Lift > 0 {
			return 0, float64(r.Lift) <= s.lift+1e-12
		}
		return math.Max(float64(r.Gap), 1e-12), true
	}
	if sum := s.sum(p, f); sum <= twoPi {
		return math.Max(1-sum/twoPi, 1e-12), true
	}
	return 0, s.closes(l, p, f)
}

// sum is Σθ of the layer with f fillers, unlifted.
func (s *search) sum(p *part, f int) float64 {
	n := len(s.d)
	if p.min == p.max {
		return float64(p.count+f) * s.angles[(p.max*n+p.min)*n+p.min]
	}
	t := 0.0
	for _, q := range s.pairs(p, f) {
		t += float64(q.n) * s.angles[(p.max*n+int(q.i))*n+int(q.j)]
	}
	return t
}

// pairs counts which sizes lie side by side in zig-zag.
func (s *search) pairs(p *part, f int) []pair {
	key := adjKey{p.v, f}
	if got, ok := s.adj[key]; ok {
		return got
	}
	var idx []uint8
	var ds []unit.Millimetre
	for i, k := range p.n {
		if i == p.min {
			k += f
		}
		for range k {
			idx, ds = append(idx, uint8(i)), append(ds, unit.Millimetre(s.d[i]))
		}
	}
	order := lay.ZigZag(ds)
	var out []pair
	for k := range order {
		a, b := idx[order[k]], idx[order[(k+1)%len(order)]]
		if a > b {
			a, b = b, a
		}
		if i := slices.IndexFunc(out, func(q pair) bool { return q.i == a && q.j == b }); i >= 0 {
			out[i].n++
		} else {
			out = append(out, pair{a, b, 1})
		}
	}
	s.adj[key] = out
	return out
}

// closes reports whether a layer that is too full unlifted closes within the lift.
func (s *search) closes(l *label, p *part, f int) bool {
	mean := (p.sum + float64(f)*s.d[p.min]) / float64(p.count+f)
	r := l.tape/2 + s.lift*mean
	L := unit.Millimetre(float64(s.rules.LayRatio) * (math.Max(l.crown, 2*r) + 2*s.d[p.max]))
	if p.min == p.max {
		return float64(p.count+f)*float64(lay.NeighbourAngle(unit.Millimetre(s.d[p.min]), unit.Millimetre(s.d[p.min]), unit.Millimetre(r), L)) <= twoPi+1e-12
	}
	t := 0.0
	for _, q := range s.pairs(p, f) {
		t += float64(q.n) * float64(lay.NeighbourAngle(unit.Millimetre(s.d[q.i]), unit.Millimetre(s.d[q.j]), unit.Millimetre(r), L))
		if t > twoPi+1e-12 {
			return false
		}
	}
	return true
}

// stackEffort is what laying a layer costs beside testing one: about twenty to one, measured.
const stackEffort = 20

// stack puts the layer on and works out what it comes to.
func (s *search) stack(l *label, p *part, f int) *label {
	s.effort -= stackEffort
	bed := lay.Bed{Crown: unit.Millimetre(l.crown), Tape: unit.Millimetre(l.tape)}
	ring := lay.LayZigZag(s.list(p.n, f), bed, lay.Laying{Ratio: s.rules.LayRatio})
	lumpy, spread := s.lumps(p.min, p.max)
	return &label{
		used: l.used + p.v, crown: float64(ring.Over), tape: float64(ring.Tape),
		fillers: l.fillers + f, fillerMM: l.fillerMM + float64(f)*s.d[p.min],
		lumpy: l.lumpy + lumpy, spread: l.spread + spread,
		layers: l.layers + 1, centreN: l.centreN, parent: l, pick: pick{v: p.v, fillers: f},
	}
}

// keep drops stacks that another on the same bed beats, and all but the best
// width where there are too many.
func (s *search) keep(ls []*label) []*label {
	slices.SortStableFunc(ls, func(a, b *label) int {
		return cmp.Or(cmp.Compare(s.soFar(a), s.soFar(b)), cmp.Compare(a.tape, b.tape), cmp.Compare(a.layers, b.layers), cmp.Compare(a.centreN, b.centreN))
	})
	out := ls[:0:0]
	for _, l := range ls {
		beaten := false
		for _, o := range out {
			if math.Abs(o.crown-l.crown) < 1e-9 && math.Abs(o.tape-l.tape) < 1e-9 &&
				o.fillers <= l.fillers && o.lumpy <= l.lumpy && s.soFar(o) <= s.soFar(l) {
				beaten = true
				break
			}
		}
		if beaten {
			continue
		}
		if len(out) == s.width {
			s.truncated = true
			break
		}
		out = append(out, l)
	}
	return out
}

func (s *search) soFar(l *label) float64 {
	return l.crown + float64(s.rules.FillerWeight)*l.fillerMM + l.spread
}
