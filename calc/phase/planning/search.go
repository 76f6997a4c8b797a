package planning

import (
	"math"
	"slices"

	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// Search is the planning of one branch. Begin answers at once; Run goes on in slices of counted effort,
// and Proposal is what has been found so far. It reads the sheet it was begun on and touches nothing of it.
type Search struct {
	s        *sheet.Sheet
	i        int
	ranks    bundle.Ranks
	held     []bundle.Holding
	inCentre []string           // units that can lie in the centre together
	spares   []sheet.SparePlace // that the shop still wants
	tails    []int
	weight   unit.Millimetre // of what is buried
	core     Core            // the centre that is asked for

	leavers bool // early leavers are wished outside, and some leave early
	forks   bool // all run equally far, and then part
	runs    []*run
}

// asked tells the questions apart that the planner is asked of one branch.
type asked struct {
	unitsIn bool  // units are held in the centre
	order   order // in which components leave
	spares  bool  // new spares are laid in
}

// order is what the layers of a lay-up must keep to, from the inside out.
type order int

const (
	anyOrder order = iota
	asTheyLeave
	byTail // one branch at the far end round another
)

// run is one question to the planner, and every lay-up that it has ever been answered with: a plan that
// another beats may still be the better one when its components are named.
type run struct {
	of       asked
	search   *plan.Search
	held     []bundle.Holding
	spares   []sheet.SparePlace
	options  []sheet.Option
	finds    int
	provenAt int // effort by which its cheapest was proven
}

// Begin takes up the planning of a branch, and answers at once: some tenths of a second.
func Begin(s *sheet.Sheet, i int) *Search {
	q := newSearch(s, i)
	q.Proposal()
	return q
}

// newSearch is the planning of a branch before anything is asked.
func newSearch(s *sheet.Sheet, i int) *Search {
	b := &s.H.Branches[i]
	q := &Search{s: s, i: i, ranks: bundle.RanksOf(s, i), held: bundle.Held(s, i), spares: bundle.SparesFor(s, i),
		weight: s.Limits.LeaverWeight}
	ids := s.Branches[i].Components
	differ := slices.ContainsFunc(ids, func(id string) bool { return q.ranks.Depth[id] != q.ranks.Depth[ids[0]] })
	q.tails = nexts(ids, q.ranks)
	q.leavers = b.LeaversOut.Or(true) && differ
	q.forks = b.LeaversOut.Or(true) && !differ && len(q.tails) > 1
	if !b.LeaversOut.Or(true) {
		q.weight = 0
	}
	if b.UnitsIn.Or(true) {
		q.inCentre = centreUnits(s, i, q.held)
	}
	return q
}

// ask is every answer to a question, which is asked when it is first needed.
func (q *Search) ask(of asked) *run {
	if k := slices.IndexFunc(q.runs, func(r *run) bool { return r.of == of }); k >= 0 {
		return q.runs[k]
	}
	ranks := q.ranks
	if of.order == byTail {
		ranks.Depth = byBranch(q.s.Branches[q.i].Components, ranks, q.tails)
	}
	as := questionOf(q.s, q.i, ranks, q.held)
	if of.unitsIn {
		as.hold(q.s, ranks, q.inCentre)
	}
	q.core.put(&as)
	as.ask.InOrder = of.order != anyOrder
	r := &run{of: of, held: as.held, provenAt: math.MaxInt}
	if of.spares {
		r.spares = q.spares
		as.ask.Spares, as.ask.SpareD = len(q.spares), q.s.Wires[q.spares[0].Like].Dia.Nominal
	}
	r.search = plan.Begin(as.ask)
	if q.core.Kind == AnyCore {
		r.search.AtOnce()
	} else {
		r.search.Run(coreEffort)
	}
	q.gather(r)
	q.runs = append(q.runs, r)
	return r
}

// gather names the components of the plans that are new.
func (q *Search) gather(r *run) (found bool) {
	if reach, ok := r.search.Reach(); ok && reach.Proven {
		r.provenAt = min(r.provenAt, r.search.Spent())
	}
	if n := r.search.Finds(); n == r.finds {
		return false
	} else {
		r.finds = n
	}
	for _, p := range r.search.Plans() {
		if slices.ContainsFunc(r.options, func(o sheet.Option) bool { return alike(o.Plan, p) }) {
			continue
		}
		o := option(q.s, q.i, p, q.ranks, r.held, r.spares, q.weight, q.forks || q.leavers && len(q.tails) > 1)
		r.options, found = append(r.options, o), true
	}
	return found
}

// alike reports whether two plans put the same into every layer.
func alike(a, b plan.Plan) bool {
	return a.Relaxed == b.Relaxed && slices.EqualFunc(a.Layers, b.Layers, func(x, y plan.Layer) bool {
		return slices.Equal(x.Sizes, y.Sizes) && slices.Equal(x.N, y.N) && x.Fillers == y.Fillers && x.CentreMM == y.CentreMM
	})
}

// frontEffort is what is spent on the lay-ups that cost more, once the cheapest answer to a question is proven.
const frontEffort = 1_000_000

// open reports whether a longer search may find anything more.
func (r *run) open() bool {
	reach, ok := r.search.Reach()
	return ok && !reach.All && r.search.Spent() < min(r.provenAt, math.MaxInt-frontEffort)+frontEffort
}

// Run spends about so much effort more, on the question that has had least; found says that there are
// lay-ups which were not there before, more that a longer search may find others.
func (q *Search) Run(effort int) (found, more bool) {
	r := q.next()
	if r == nil {
		return false, false
	}
	r.search.Run(effort)
	found = q.gather(r)
	return found, q.next() != nil
}

// next is the open question that has had least effort; nil where none is open.
func (q *Search) next() (least *run) {
	for _, r := range q.runs {
		if r.open() && (least == nil || r.search.Spent() < least.search.Spent()) {
			least = r
		}
	}
	return least
}
