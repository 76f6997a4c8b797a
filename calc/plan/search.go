package plan

import (
	"slices"

	"contralay/calc/lay"
	"contralay/model/unit"
)

// search is one run over the layers of one question, in plain numbers.
type search struct {
	d          []float64 // sizes, thin to thick
	need, most []int     // per size: at least, at most (they differ for spares only)
	spare      int       // index of the size spares are of; -1 none
	stride     []int     // mixed radix over most+1
	total      int
	rules      Rules
	centres    Centres
	gapIn      float64
	gapOut     float64
	lift       float64
	fillerMost int
	noFiller   bool
	mayLose    bool

	width     int // labels kept per set of components
	effort    int
	truncated bool
	adj       map[adjKey][]pair
	angles    []float64 // scratch: θ by largest size, size, size
	found     *front
}

// label is a stack of layers that holds some of the components: everything that
// decides what can follow, and what it has cost.
type label struct {
	used        int
	crown, tape float64
	fillers     int
	fillerMM    float64
	lumpy       int
	spread      float64
	layers      int
	centreN     int
	parent      *label
	pick        pick
}

// pick is what one layer was given.
type pick struct {
	v       int // counts, as an index
	fillers int
	builtMM float64
	rod     bool
}

// pair is how often two sizes lie side by side in a layer.
type pair struct {
	i, j uint8
	n    uint16
}

type adjKey struct{ v, fillers int }

func newSearch(a Ask) *search {
	sizes := merge(a.Sizes)
	s := &search{rules: a.Rules, centres: a.Centres, spare: -1, adj: map[adjKey][]pair{}, found: &front{}}
	for _, z := range sizes {
		s.d = append(s.d, float64(z.D))
		s.need = append(s.need, z.N)
		s.most = append(s.most, z.N)
	}
	if a.Spares > 0 && len(s.d) > 0 {
		s.spare = 0
		for i := range s.d {
			if s.need[i] > s.need[s.spare] {
				s.spare = i
			}
		}
		s.most[s.spare] += a.Spares
	}
	s.total = 1
	for i := range s.d {
		s.stride = append(s.stride, s.total)
		s.total *= s.most[i] + 1
	}
	s.gapIn, s.gapOut, s.lift = float64(a.Rules.GapInner), float64(a.Rules.GapOuter), float64(a.Rules.LiftMax)
	if len(s.d) > 0 {
		s.mayLose = s.d[0] < 0.2501*s.d[len(s.d)-1]
	}
	s.angles = make([]float64, len(s.d)*len(s.d)*len(s.d))
	return s
}

// merge adds up equal diameters and sorts thin to thick; what is not a positive
// diameter or count is left out.
func merge(in []Size) []Size {
	var out []Size
	for _, z := range in {
		if z.N <= 0 || z.D <= 0 || !unit.Finite(float64(z.D)) {
			continue
		}
		if i := slices.IndexFunc(out, func(o Size) bool { return o.D == z.D }); i >= 0 {
			out[i].N += z.N
		} else {
			out = append(out, z)
		}
	}
	slices.SortFunc(out, func(a, b Size) int {
		if a.D < b.D {
			return -1
		}
		return 1
	})
	return out
}

func (s *search) counts(v int) []int {
	out := make([]int, len(s.d))
	for i := range out {
		out[i] = v / s.stride[i] % (s.most[i] + 1)
	}
	return out
}

func (s *search) index(n []int) int {
	v := 0
	for i, k := range n {
		v += k * s.stride[i]
	}
	return v
}

// complete reports whether counts hold everything, and how many are spares.
func (s *search) complete(n []int) (spares int, ok bool) {
	for i, k := range n {
		if k < s.need[i] {
			return 0, false
		}
		spares += k - s.need[i]
	}
	return spares, true
}

// run builds stacks outward, from sets of few components to sets of many, and
// gathers the plans that no other beats.
func (s *search) run() {
	at := make([][]*label, s.total)
	order := make([]int, s.total)
	for v := range order {
		order[v] = v
	}
	sum := func(v int) int {
		t := 0
		for i := range s.d {
			t += v / s.stride[i] % (s.most[i] + 1)
		}
		return t
	}
	slices.SortStableFunc(order, func(a, b int) int { return sum(a) - sum(b) })
	parts := s.parts(order)
	s.seedFrom(parts, func(l *label) { at[l.used] = append(at[l.used], l) })
	for _, v := range order {
		if v == 0 || len(at[v]) == 0 {
			continue
		}
		have := s.counts(v)
		for _, l := range s.keep(at[v]) {
			if s.hopeless(l.crown, l.fillers, l.lumpy, have) {
				continue
			}
			s.grow(l, have, parts, func(n *label) { at[n.used] = append(at[n.used], n) })
			if s.effort < 0 {
				s.truncated = true
				return
			}
		}
		at[v] = nil
	}
}

// part is one possible content of a layer.
type part struct {
	v        int
	n        []int
	count    int
	min, max int // index of its thinnest and thickest size
	sum      float64
}

func (s *search) parts(order []int) []part {
	var out []part
	for _, v := range order {
		if v == 0 {
			continue
		}
		p := part{v: v, n: s.counts(v), min: -1}
		for i, k := range p.n {
			if k > 0 {
				if p.min < 0 {
					p.min = i
				}
				p.max = i
				p.count += k
				p.sum += float64(k) * s.d[i]
			}
		}
		out = append(out, p)
	}
	return out
}

// seedFrom offers every centre among parts.
func (s *search) seedFrom(parts []part, add func(*label)) {
	for _, p := range parts {
		if p.count > 5 || (p.count > 3 && p.min != p.max) {
			continue
		}
		if p.min != p.max && s.centres < UnequalCentres {
			continue
		}
		ds := s.list(p.n, 0)
		g := lay.Centre(ds)
		l := &label{used: p.v, crown: float64(g.Over), tape: float64(g.Tape), centreN: p.count, pick: pick{v: p.v}}
		l.lumpy, l.spread = s.lumps(p.min, p.max)
		if g.Rod > 0 {
			l.fillers, l.fillerMM, l.pick.rod = 1, float64(g.Rod), true
		}
		s.finish(l, p.n)
		add(l)
		if p.count == 1 && s.centres >= BuiltCentres {
			for _, n := range []int{7, 8} {
				up := float64(lay.BuiltUp(n, ds[0], s.rules.LayRatio))
				b := *l
				b.crown, b.tape, b.fillers, b.fillerMM = up, up, 1, up-float64(ds[0])
				b.pick.builtMM = up
				add(&b)
			}
		}
	}
}

func (s *search) lumps(lo, hi int) (lumpy int, cost float64) {
	w := 0.3
	if s.d[hi] > float64(s.rules.LumpyAt)*s.d[lo] {
		lumpy, w = 1, 1.0
	}
	return lumpy, w * (s.d[hi] - s.d[lo])
}

// list is counts as diameters, thin to thick, with fillers of the thinnest.
func (s *search) list(n []int, fillers int) []unit.Millimetre {
	var out []unit.Millimetre
	for i, k := range n {
		if k > 0 && fillers > 0 {
			k, fillers = k+fillers, 0
		}
		for range k {
			out = append(out, unit.Millimetre(s.d[i]))
		}
	}
	return out
}
