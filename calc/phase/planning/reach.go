package planning

import (
	"slices"

	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// was reports whether a question has been asked.
func (q *Search) was(of asked) bool {
	return slices.ContainsFunc(q.runs, func(r *run) bool { return r.of == of })
}

// reach says what is certain of a branch's options, best first.
//
// A lay-up costs what its plan does and the weight of each component that is buried in it. So none costs
// less than the cheapest plan that is free to bury, and one weight; or than the cheapest that buries none.
func (q *Search) reach(unitsIn bool, options []sheet.Option) sheet.Reach {
	out := sheet.Reach{Ended: q.next() == nil}
	if len(options) == 0 {
		return out
	}
	best := options[0]
	all, first := true, true
	thinnest := best.Plan.Over
	for _, o := range options {
		if o.Plan.Relaxed == best.Plan.Relaxed {
			thinnest = min(thinnest, o.Plan.Over)
		}
	}
	for _, spares := range []bool{false, true} {
		if spares && len(q.spares) == 0 {
			continue
		}
		free, relaxed, every := q.certain(asked{unitsIn, anyOrder, spares})
		if relaxed < best.Plan.Relaxed {
			return out // it cannot be, and nothing is certain
		}
		if relaxed > best.Plan.Relaxed {
			continue
		}
		least := free
		if q.leavers {
			least = free + unit.Ratio(q.weight)
			if inOrder, relaxed, _ := q.certain(asked{unitsIn, asTheyLeave, spares}); relaxed == best.Plan.Relaxed {
				least = min(least, inOrder)
			}
		}
		if first || least < out.Least {
			out.Least, first = least, false
		}
		all = all && every
	}
	if first {
		return out
	}
	out.Proven = best.Cost <= out.Least+1e-9
	out.Thinnest = all && !slices.ContainsFunc(q.runs, func(r *run) bool {
		return r.of.unitsIn == unitsIn && slices.ContainsFunc(r.options, func(o sheet.Option) bool {
			return o.Plan.Relaxed == best.Plan.Relaxed && unit.Written(o.Plan.Over) < unit.Written(thinnest)
		})
	})
	return out
}

// certain is what no plan of a question costs less than, what limits its plans leave, and whether none that
// is worth having is left out.
func (q *Search) certain(of asked) (least unit.Ratio, relaxed plan.Relaxed, all bool) {
	reach, ok := q.ask(of).search.Reach()
	if !ok {
		return 0, plan.Nothing + 1, true
	}
	return reach.Least, reach.Relaxed, reach.All
}
