package planning

import (
	"slices"

	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// search is the planning of one branch: what it asks of package plan, one question after another.
type search struct {
	s        *sheet.Sheet
	i        int
	r        bundle.Ranks
	held     []bundle.Holding
	inCentre []string // units that can lie in the centre together
	tails    []int    // the branches that components go on into
	weight   unit.Millimetre
	leavers  bool // what leaves first is wished outside
	differ   bool // some leave before others
	forks    bool // all run equally far, into more than one branch
	units    bool // units are wished in the centre, and can lie there
	core     Core
	effort   int
	watch    func(share float64) bool

	done, runs int
}

func newSearch(s *sheet.Sheet, i int) *search {
	b := &s.H.Branches[i]
	q := &search{s: s, i: i, r: bundle.RanksOf(s, i), held: bundle.Held(s, i), leavers: b.LeaversOut.Or(true),
		weight: s.Limits.LeaverWeight}
	ids := s.Branches[i].Components
	for _, id := range ids {
		q.differ = q.differ || q.r.Depth[id] != q.r.Depth[ids[0]]
	}
	if !q.leavers {
		q.weight = 0
	}
	q.inCentre = centreUnits(s, i, q.held)
	q.units = b.UnitsIn.Or(true) && len(q.inCentre) > 0
	q.tails = nexts(ids, q.r)
	q.forks = q.leavers && !q.differ && len(q.tails) > 1
	return q
}

// runsOfAll is how many questions all asks at most, and one more.
func (q *search) runsOfAll() int {
	if q.leavers && q.differ || q.forks {
		return 3
	}
	return 2
}

// ask is the lay-ups that answer one question: the units in the centre or not, what leaves first outside where
// leaves says what that is, and up to so many spares more.
func (q *search) ask(unitsIn bool, leaves map[string]int, spares []sheet.SparePlace) []sheet.Option {
	of := q.r
	if leaves != nil {
		of.Depth = leaves
	}
	a := questionOf(q.s, q.i, of, q.held)
	if unitsIn {
		a.hold(q.s, of, q.inCentre)
	}
	q.core.put(&a)
	a.ask.InOrder, a.ask.Spares, a.ask.Effort = leaves != nil, len(spares), q.effort
	if len(spares) > 0 {
		a.ask.SpareD = q.s.Wires[spares[0].Like].Dia.Nominal
	}
	if q.watch != nil {
		a.ask.Watch = func(share float64) bool { return q.watch((float64(q.done) + share) / float64(q.runs)) }
	}
	var out []sheet.Option
	for _, p := range plan.Make(a.ask) {
		out = append(out, option(q.s, q.i, p, q.r, a.held, spares, q.weight, q.leavers && len(q.tails) > 1))
	}
	q.done++
	return out
}

// all is ask with what leaves first outside, and without that wish; priced.
func (q *search) all(unitsIn bool, spares []sheet.SparePlace) []sheet.Option {
	out := q.ask(unitsIn, nil, spares)
	switch {
	case q.leavers && q.differ:
		out = append(out, q.ask(unitsIn, q.r.Depth, spares)...)
	case q.forks && !slices.ContainsFunc(out, func(o sheet.Option) bool { return o.Parted == 0 }):
		// No lay-up of sizes alone leaves every layer whole: try one branch round another.
		for _, o := range q.ask(unitsIn, byBranch(q.s.Branches[q.i].Components, q.r, q.tails), spares) {
			if o.Parted == 0 {
				out = append(out, o)
			}
		}
	}
	price(out, q.weight)
	return out
}
