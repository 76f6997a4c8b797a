package plan

import (
	"cmp"
	"math"
	"slices"

	"contralay/calc/lay"
	"contralay/model/unit"
)

// Make answers a planning question: every plan worth having, best first; never
// empty where there is anything to lay. Same question, same answer.
//
// Cost = over + filler_weight·Σ filler diameters + Σ w·(d_max − d_min) −
// spare_gain·Σ spare diameters, w = 0.3, or 1.0 in a lumpy layer. The search goes
// over sets of components from few to many and keeps for each the stacks that
// can still matter; it is exact unless it runs out of effort.
func Make(a Ask) []Plan {
	if len(merge(a.Sizes)) == 0 {
		return nil
	}
	for relaxed := Keeps; relaxed <= Nothing; relaxed++ {
		if out := attempt(a, relaxed); len(out) > 0 {
			if relaxed != Keeps {
				out = out[:1]
			}
			return out
		}
	}
	// So little effort that not one stack got to the end: one row, one stack to a
	// place, however long it takes.
	for relaxed := Keeps; relaxed <= Nothing; relaxed++ {
		s := setUp(a, relaxed)
		s.width, s.effort = 1, math.MaxInt
		s.segment(upTo(len(s.d)))
		if out := s.plans(relaxed, false); len(out) > 0 {
			return out[:1]
		}
	}
	return nil
}

// setUp makes ready a search that leaves the limits relaxed says.
func setUp(a Ask, relaxed Relaxed) *search {
	s := newSearch(a)
	n := 0
	for _, k := range s.most {
		n += k
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
	return s
}

func attempt(a Ask, relaxed Relaxed) []Plan {
	effort := a.Effort
	if effort <= 0 {
		effort = DefaultEffort
	}
	// A narrow first run over a few orders finds good plans; the wide one is then
	// spared whatever they beat, and is exact where it ends within the effort.
	quick := setUp(a, relaxed)
	quick.width, quick.effort = 6, effort/2
	quick.segments()
	wide := setUp(a, relaxed)
	wide.found.all = slices.Clone(quick.found.all)
	if wide.total > mostSets {
		return wide.plans(relaxed, false)
	}
	wide.width, wide.effort = 1<<30, effort
	wide.run()
	return wide.plans(relaxed, !wide.truncated)
}

// mostSets is the number of different sets of components above which the wide
// search is not begun: it could not end within any effort worth waiting for.
const mostSets = 20_000

// plans turns the front into what is shown.
func (s *search) plans(relaxed Relaxed, proven bool) []Plan {
	out := make([]Plan, 0, len(s.found.all))
	for _, d := range s.found.all {
		p := Plan{Cost: unit.Ratio(d.cost), Proven: proven, Fillers: d.fillers, Spares: d.spares,
			Over: unit.Millimetre(d.crown), Lumpy: d.lumpy, Relaxed: relaxed}
		p.Layers = s.layers(d)
		out = append(out, p)
	}
	slices.SortStableFunc(out, func(a, b Plan) int {
		return cmp.Or(cmp.Compare(a.Cost, b.Cost), cmp.Compare(a.Fillers, b.Fillers), cmp.Compare(a.Over, b.Over), cmp.Compare(len(a.Layers), len(b.Layers)))
	})
	return out
}

// layers reads a stack back from the outside in and fills in what each takes.
func (s *search) layers(d done) []Layer {
	var chain []*label
	for l := d.label; l != nil; l = l.parent {
		chain = append(chain, l)
	}
	slices.Reverse(chain)
	spares := d.spares
	out := make([]Layer, len(chain))
	how := lay.Laying{Ratio: s.rules.LayRatio}
	for i, l := range chain {
		n := s.counts(l.pick.v)
		y := Layer{Over: unit.Millimetre(l.crown), Tape: unit.Millimetre(l.tape), Fillers: l.pick.fillers, CentreMM: unit.Millimetre(l.pick.builtMM)}
		for k, c := range n {
			if c > 0 {
				if len(y.N) == 0 {
					y.FillerMM = unit.Millimetre(s.d[k])
				}
				y.Sizes, y.N = append(y.Sizes, unit.Millimetre(s.d[k])), append(y.N, c)
			}
		}
		if y.Fillers == 0 {
			y.FillerMM = 0
		}
		if i == 0 {
			switch {
			case l.pick.rod:
				y.Fillers, y.FillerMM = 1, unit.Millimetre(l.fillerMM)
			case l.pick.builtMM > 0:
				y.Fillers, y.FillerMM = 1, unit.Millimetre(l.fillerMM)
			}
		} else {
			bed := lay.Bed{Crown: unit.Millimetre(chain[i-1].crown), Tape: unit.Millimetre(chain[i-1].tape)}
			ds := s.list(n, l.pick.fillers)
			ring := lay.LayZigZag(ds, bed, how)
			y.Gap, y.Proud = ring.Gap, ring.Proud
			y.Room = lay.Room(ds, y.Sizes[0], bed, how, unit.Ratio(s.lift))
			y.Takes = len(ds) + y.Room
		}
		out[i] = y
	}
	// Spares are the ones laid last: outermost, beside what they may serve.
	for i := len(out) - 1; i >= 0 && spares > 0; i-- {
		for k, z := range out[i].Sizes {
			if s.spare >= 0 && float64(z) == s.d[s.spare] {
				out[i].Spares = min(spares, out[i].N[k])
				spares -= out[i].Spares
			}
		}
	}
	return out
}
