package planning

import (
	"slices"

	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
)

// Core is what is asked of the centre of a lay-up; the zero value asks nothing beyond the wishes of the file.
type Core struct {
	Kind CoreKind
	N    int // of CountCore and EqualCore: how many pieces, one to five
}

// CoreKind is a kind of centre.
type CoreKind int

// The kinds of centre that can be asked for.
const (
	AnyCore   CoreKind = iota // what the file wishes, else what costs least
	CountCore                 // so many pieces, units or wires, of whatever sizes lie best together
	EqualCore                 // so many pieces of one size
	UnitCore                  // the made-up units and nothing else
	MixedCore                 // two or three pieces, not all of one size
	BuiltCore                 // one piece, built up with tape until the layer round it closes
)

// coreEffort is what is spent on a centre that was asked for: a tenth of a second's work at most is too much for each
// row of a table. Measured on the branches of the examples: within 0.2 % of the cost that an answer at once finds.
const coreEffort = 30_000

// put asks a question for this centre.
func (c Core) put(q *question) {
	switch c.Kind {
	case CountCore:
		q.ask.Centres, q.ask.CentreN = plan.UnequalCentres, c.N
	case EqualCore:
		q.ask.Centres, q.ask.CentreN = plan.EqualCentres, c.N
	case UnitCore:
		n := 0
		for _, h := range q.held {
			if h.Layer == 0 {
				n = len(h.Ids)
			}
		}
		q.ask.Centres, q.ask.CentreN = plan.UnequalCentres, n
	case MixedCore:
		q.ask.Centres, q.ask.Only = plan.UnequalCentres, plan.OnlyUnequal
	case BuiltCore:
		q.ask.Only = plan.OnlyBuilt
	}
}

// forbidden reports whether a locked centre has another number of pieces than is asked for: the planner leaves it as it is.
func (c Core) forbidden(held []bundle.Holding) bool {
	return (c.Kind == CountCore || c.Kind == EqualCore) && slices.ContainsFunc(held, func(h bundle.Holding) bool {
		return h.Layer == 0 && h.Locked && len(h.Ids) != c.N
	})
}

// CentreUnits is the units of branch i that can lie in its centre together, and would of UnitCore.
func CentreUnits(s *sheet.Sheet, i int) []string { return centreUnits(s, i, bundle.Held(s, i)) }

// Best is the lay-up that a branch is proposed as, with such a centre: of AnyCore the one that Propose calls Plain,
// in a part of its time, for no question is asked but those that decide. It adds no spare. False where nothing can be
// laid so: a locked layer or a pinned piece forbids it, or there are no such pieces.
func Best(s *sheet.Sheet, i int, core Core) (sheet.Option, bool) {
	q := newSearch(s, i)
	if core.forbidden(q.held) {
		return sheet.Option{}, false
	}
	unitsIn := core.Kind == AnyCore && len(q.inCentre) > 0
	if q.core = core; core.Kind == UnitCore {
		q.inCentre = centreUnits(s, i, q.held)
		if unitsIn = len(q.inCentre) > 0; !unitsIn {
			return sheet.Option{}, false
		}
	}
	best := worthHaving(q.all(unitsIn, false))
	if core.Kind == AnyCore && unitsIn && (len(best) == 0 || best[0].Plan.Relaxed > plan.Keeps) {
		if free := worthHaving(q.all(false, false)); len(best) == 0 || len(free) > 0 && free[0].Plan.Relaxed < best[0].Plan.Relaxed {
			best = free
		}
	}
	if len(best) == 0 {
		return sheet.Option{}, false
	}
	return best[0], true
}
