package plan

import (
	"cmp"
	"math"
	"slices"

	"contralay/model/unit"
)

// front is the complete plans that no other beats in fillers, over (to 0.01 mm),
// lumpy layers and spares.
type front struct{ all []done }

type done struct {
	*label
	over   int // hundredths of a millimetre, half up
	spares int
	cost   float64
	last   int // fillers in the outermost layer
}

func hundredths(over float64) int { return int(math.Round(unit.RoundHalfUp(over, 0.01) * 100)) }

// finish offers a stack that may hold everything as a plan.
func (s *search) finish(l *label, n []int) {
	spares, ok := s.complete(n)
	if !ok {
		return
	}
	d := done{label: l, over: hundredths(l.crown), spares: spares, last: l.pick.fillers, cost: s.soFar(l)}
	if spares > 0 {
		d.cost -= float64(s.rules.SpareGain) * float64(spares) * s.d[s.spare]
	}
	s.found.offer(d)
}

func (f *front) offer(d done) {
	for i, o := range f.all {
		if o.over == d.over && o.fillers == d.fillers && o.lumpy == d.lumpy && o.spares == d.spares {
			if better(d, o) {
				f.all[i] = d
			}
			return
		}
		if o.over <= d.over && o.fillers <= d.fillers && o.lumpy <= d.lumpy && o.spares >= d.spares {
			return
		}
	}
	f.all = slices.DeleteFunc(f.all, func(o done) bool {
		return d.over <= o.over && d.fillers <= o.fillers && d.lumpy <= o.lumpy && d.spares >= o.spares
	})
	f.all = append(f.all, d)
}

// better decides between plans of equal figures: cheaper, then fillers in the
// outermost layer, then fewer layers, then fewer in the centre, then the fuller
// inner layer.
func better(a, b done) bool {
	if math.Abs(a.cost-b.cost) > 1e-9 {
		return a.cost < b.cost
	}
	c := cmp.Or(-cmp.Compare(a.last, b.last), cmp.Compare(a.layers, b.layers), cmp.Compare(a.centreN, b.centreN))
	if c != 0 {
		return c < 0
	}
	for x, y := a.label, b.label; x != nil && y != nil; x, y = x.parent, y.parent {
		if x.pick.v != y.pick.v {
			return x.pick.v < y.pick.v
		}
	}
	return false
}

// hopeless reports whether nothing that grows from a stack of at least that crown
// can enter the front: even with no filler more, as few layers as there can be and
// every spare, some plan found already beats it.
func (s *search) hopeless(crown float64, fillers, lumpy int, have []int) bool {
	thin, area, spares := 0.0, 0.0, 0
	for i, k := range have {
		if k < s.need[i] && thin == 0 {
			thin = s.d[i]
		}
		area += float64(max(k, s.need[i])) * s.d[i] * s.d[i]
		if i == s.spare {
			spares = s.most[i] - s.need[i]
		}
	}
	return s.found.beats(math.Max(crown+2*thin, math.Sqrt(area)), fillers, lumpy, spares)
}

// beats reports whether a plan of the front beats one of these figures, over
// being the least it can come to. Equal figures are not beaten.
func (f *front) beats(least float64, fillers, lumpy, spares int) bool {
	over := hundredths(least - 1e-6)
	for _, o := range f.all {
		if o.over <= over && o.fillers <= fillers && o.lumpy <= lumpy && o.spares >= spares &&
			(o.over < over || o.fillers < fillers || o.lumpy < lumpy || o.spares > spares) {
			return true
		}
	}
	return false
}
