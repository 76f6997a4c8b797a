package plan

import (
	"cmp"
	"slices"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

// Make answers a planning question: every plan worth having that Ask.Effort finds, best first; never
// empty where there is anything to lay and nothing is held. Same question, same answer.
//
// Cost = over + filler_weight·Σ filler diameters + Σ w·(d_max − d_min) − spare_gain·Σ spare diameters,
// w = 0.3, or 1.0 in a lumpy layer.
func Make(a Ask) []Plan {
	q := Begin(a)
	if a.Effort == 0 {
		q.AtOnce()
	} else {
		q.Run(a.Effort)
	}
	return q.Plans()
}

// setUp makes ready a search that leaves the limits relaxed says; ok is false
// where more is held than there is.
func setUp(a Ask, relaxed Relaxed) (s *stacking, ok bool) {
	s = newStacking(a)
	n := 0
	for _, k := range s.kinds {
		n += k.most
	}
	s.fillerMost = max(n, 6)
	if relaxed >= Gaps {
		s.noFiller = true
	}
	if relaxed >= GapLift {
		s.lift = float64(a.Rules.LiftTight)
	}
	if relaxed >= Nothing {
		s.lift = 1e3
		if s.centres == EqualCentres {
			s.centres = UnequalCentres
		}
	}
	ok = s.hold(a)
	// What is held whole needs no place any more: it must not count as a kind.
	var left []kind
	for i, k := range s.kinds {
		if i == s.spare {
			s.spare = len(left)
		}
		if k.most > 0 {
			left = append(left, k)
		} else if s.spare == len(left) {
			s.spare = -1
		}
	}
	s.kinds, s.take = left, make([]int, len(left))
	return s, ok
}

// hold takes what is held out of what there is to choose from.
func (s *stacking) hold(a Ask) bool {
	for _, h := range a.Held {
		p := &held{n: make([]int, len(s.d)), locked: h.Locked, fillers: h.Fillers, fillerMM: float64(h.FillerMM),
			how: lay.Laying{Ratio: a.Rules.LayRatio, Lay: h.Lay, Bind: h.Bind}}
		for _, z := range merge(h.Sizes, a.InOrder) {
			size := s.sizeOf(z.D)
			left := z.N
			if size < 0 {
				return false
			}
			for i := range s.kinds {
				k := &s.kinds[i]
				if k.size == size && left > 0 {
					take := min(left, k.need)
					k.need, k.most, left = k.need-take, k.most-take, left-take
				}
			}
			if left > 0 {
				return false
			}
			p.n[size] += z.N
		}
		if s.held == nil {
			s.held = map[int]*held{}
		}
		s.held[h.At] = p
		if len(h.Sizes) > 0 || h.Locked {
			s.lastHeld = max(s.lastHeld, h.At)
		}
	}
	return true
}

// plans turns the front into what is shown.
func (s *stacking) plans(relaxed Relaxed, proven bool) []Plan {
	all := s.found.all
	if least := *s.found.least; !slices.ContainsFunc(all, func(d done) bool { return d.cost <= least.cost+hair }) {
		all = append(slices.Clone(all), least) // some other plan is thinner and yet dearer
	}
	out := make([]Plan, 0, len(all))
	for _, d := range all {
		p := Plan{Cost: unit.Ratio(d.cost), Proven: proven, Fillers: d.fillers, Spares: d.spares, Lumpy: d.lumpy, Relaxed: relaxed}
		p.Layers = s.layers(d)
		p.Over = p.Layers[len(p.Layers)-1].Over
		out = append(out, p)
	}
	slices.SortStableFunc(out, func(a, b Plan) int {
		return cmp.Or(cmp.Compare(a.Cost, b.Cost), cmp.Compare(a.Fillers, b.Fillers), cmp.Compare(a.Over, b.Over),
			cmp.Compare(len(a.Layers), len(b.Layers)))
	})
	return out
}

// layers reads a stack back from the outside in, lays it once more in full and
// fills in what each layer takes.
func (s *stacking) layers(d done) []Layer {
	var chain []*label
	for l := d.label; l != nil; l = l.parent {
		chain = append(chain, l)
	}
	slices.Reverse(chain)
	out := make([]Layer, len(chain))
	bed := lay.Bed{Crown: unit.Millimetre(chain[0].crown), Tape: unit.Millimetre(chain[0].tape)}
	for i, l := range chain {
		y := Layer{Over: bed.Crown, Tape: bed.Tape, Fillers: l.pick.fillers, CentreMM: unit.Millimetre(l.pick.builtMM)}
		for k, c := range l.pick.n {
			if c > 0 {
				y.Sizes, y.N = append(y.Sizes, unit.Millimetre(s.d[k])), append(y.N, c)
			}
		}
		if y.Fillers > 0 {
			y.FillerMM = unit.Millimetre(l.pick.fillerMM)
		}
		if i > 0 {
			how := lay.Laying{Ratio: s.rules.LayRatio}
			if h := s.held[i]; h != nil {
				how = h.how
			}
			ds := slices.Clone(s.list(l.pick.n, l.pick.fillers, l.pick.fillerMM))
			ring := lay.LayZigZag(ds, bed, how)
			y.Gap, y.Proud, y.Over, y.Tape = ring.Gap, ring.Proud, ring.Over, ring.Tape
			least := y.FillerMM
			if len(y.Sizes) > 0 {
				least = y.Sizes[0]
			}
			y.Room = lay.Room(ds, least, bed, how, unit.Ratio(s.lift))
			y.Takes = len(ds) + y.Room
			bed = lay.Bed{Crown: y.Over, Tape: y.Tape}
		}
		out[i] = y
	}
	s.tellSpares(out, d.spares)
	return out
}

// tellSpares says which layers hold the spares: those laid last, outermost,
// beside what they may serve.
func (s *stacking) tellSpares(out []Layer, spares int) {
	for i := len(out) - 1; i >= 0 && spares > 0; i-- {
		for k, z := range out[i].Sizes {
			if s.spare >= 0 && float64(z) == s.d[s.kinds[s.spare].size] {
				out[i].Spares = min(spares, out[i].N[k])
				spares -= out[i].Spares
			}
		}
	}
}
