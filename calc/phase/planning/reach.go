package planning

import (
	"slices"

	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// was reports whether a question has been asked.
func (q *Search) was(of asked) bool {
	return slices.ContainsFunc(q.runs, func(r *run) bool { return r.of == of })
}

// reach says what is certain of a branch's options, best first.
func (q *Search) reach(unitsIn bool, options []sheet.Option) sheet.Reach {
	var out sheet.Reach
	if len(options) > 0 {
		asks := []asking{q.asking(unitsIn, false)}
		if len(q.spares) > 0 {
			asks = append(asks, q.asking(unitsIn, true))
		}
		var found []sheet.Option
		for _, r := range q.runs {
			if r.of.unitsIn == unitsIn {
				found = append(found, r.options...)
			}
		}
		out = certain(options, found, asks, unit.Ratio(q.weight))
	}
	out.Ended = q.next() == nil
	return out
}

// asking is how far the planner has come with what is asked without new spares, or with them: where each component
// may lie anywhere, and as they leave. It is unset where no plan is found.
type asking struct {
	free, inOrder model.Opt[plan.Reach]
	leavers       bool // some leave early, and what is buried costs
}

func (q *Search) asking(unitsIn, spares bool) asking {
	come := func(in order) model.Opt[plan.Reach] {
		reach, ok := q.ask(asked{unitsIn, in, spares}).search.Reach()
		return model.Opt[plan.Reach]{V: reach, Set: ok}
	}
	out := asking{free: come(anyOrder), leavers: q.leavers}
	if q.leavers {
		out.inOrder = come(asTheyLeave)
	}
	return out
}

// certain is what is certain of options, best first, of all that are found and of what the planner says.
//
// A lay-up costs what its plan does and the weight of each component that is buried in it. So none costs
// less than the cheapest plan that is free to bury, and one weight; or than the cheapest that buries none.
func certain(options, found []sheet.Option, asks []asking, weight unit.Ratio) (out sheet.Reach) {
	best := options[0].Plan.Relaxed
	thinnest := over(options[0])
	for _, o := range options {
		if o.Plan.Relaxed == best {
			thinnest = min(thinnest, over(o))
		}
	}
	all, known, floor := true, false, unit.Ratio(0)
	for _, a := range asks {
		if !a.free.Set || a.free.V.Relaxed > best {
			continue
		}
		if a.free.V.Relaxed < best {
			return out // it cannot be, and nothing is certain
		}
		least := a.free.V.Least
		if a.leavers {
			least += weight
			if a.inOrder.Set && a.inOrder.V.Relaxed == best {
				least = min(least, a.inOrder.V.Least)
			}
		}
		if !known || least < floor {
			floor, known = least, true
		}
		all = all && a.free.V.All
	}
	if !known {
		return out
	}
	out.Least = floor
	out.Proven = options[0].Cost <= out.Least+1e-9
	out.Thinnest = all && !slices.ContainsFunc(found, func(o sheet.Option) bool {
		return o.Plan.Relaxed == best && over(o) < thinnest
	})
	return out
}
