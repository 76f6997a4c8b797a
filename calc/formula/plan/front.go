package plan

import (
	"cmp"
	"math"
	"slices"

	"contralay/model/unit"
)

// front is the complete plans that no other beats in fillers, over (to 0.01 mm),
// lumpy layers and spares.
type front struct {
	all   []done
	least *done // the cheapest of all that were offered
	finds int   // how often it changed
}

type done struct {
	*label
	over   int // hundredths of a millimetre, half up
	spares int
	cost   float64
}

func hundredths(over float64) int { return int(math.Round(unit.RoundHalfUp(over, 0.01) * 100)) }

// finish offers a stack that holds everything as a plan.
func (s *stacking) finish(l *label, spares int) {
	d := done{label: l, over: hundredths(l.crown), spares: spares, cost: s.soFar(l)}
	if spares > 0 {
		d.cost -= float64(s.rules.SpareGain) * float64(spares) * s.d[s.kinds[s.spare].size]
	}
	s.found.offer(d)
}

func (f *front) offer(d done) {
	if f.least == nil || better(d, *f.least) {
		f.least, f.finds = &d, f.finds+1
	}
	for i, o := range f.all {
		if o.over == d.over && o.fillers == d.fillers && o.lumpy == d.lumpy && o.spares == d.spares {
			if better(d, o) {
				f.all[i], f.finds = d, f.finds+1
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
	f.all, f.finds = append(f.all, d), f.finds+1
}

// better decides between plans of equal figures: cheaper, then fillers in the
// outermost layer, then fewer layers, then fewer in the centre, then the fuller
// inner layer.
func better(a, b done) bool {
	if math.Abs(a.cost-b.cost) > 1e-9 {
		return a.cost < b.cost
	}
	c := cmp.Or(-cmp.Compare(a.pick.fillers, b.pick.fillers), cmp.Compare(a.layers, b.layers), cmp.Compare(a.centreN, b.centreN))
	for x, y := a.label, b.label; c == 0 && x != nil && y != nil; x, y = x.parent, y.parent {
		for i := len(x.pick.n) - 1; i >= 0 && c == 0; i-- {
			c = cmp.Compare(x.pick.n[i], y.pick.n[i])
		}
	}
	return c < 0
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
