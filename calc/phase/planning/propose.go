package planning

import (
	"cmp"
	"maps"
	"slices"

	"contralay/calc/formula/lay"
	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// questionOf is one planning question of a branch with its components by id.
type question struct {
	ask  plan.Ask
	held []bundle.Holding
}

// Propose plans a branch. Of what it finds it names which component goes into
// which layer: those that run through inside those that leave early, those that
// part together together. The options are ranked with the weight of what is
// buried. It takes some tenths of a second and touches nothing of the sheet.
func Propose(s *sheet.Sheet, i int) sheet.Proposal { return Begin(s, i).Proposal() }

// Proposal is every option worth having that has been found so far, best first.
func (q *Search) Proposal() sheet.Proposal {
	var out sheet.Proposal
	unitsIn := len(q.inCentre) > 0
	plain := q.all(unitsIn, false)
	if unitsIn {
		free := worthHaving(q.all(false, false))
		if best := worthHaving(plain); len(best) > 0 && len(free) > 0 && best[0].Plan.Relaxed <= free[0].Plan.Relaxed {
			out.UnitsWith, out.UnitsFree = best[0].Plan.Over, free[0].Plan.Over
			out.UnitsMM = model.Some(out.UnitsWith - out.UnitsFree)
		} else {
			plain, unitsIn = free, false // no lay-up has them in the centre
		}
	}
	if q.leavers {
		if best := worthHaving(plain); len(best) > 0 {
			thin := slices.MinFunc(plain, func(a, b sheet.Option) int {
				return cmp.Or(cmp.Compare(a.Plan.Relaxed, b.Plan.Relaxed), cmp.Compare(a.Plan.Cost, b.Plan.Cost))
			})
			out.LeaversWith, out.LeaversFree = best[0].Plan.Over, thin.Plan.Over
			out.LeaversMM = model.Some(out.LeaversWith - out.LeaversFree)
		}
	}
	with := plain
	if len(q.spares) > 0 {
		with = append(slices.Clone(plain), q.all(unitsIn, true)...)
	}
	out.Options = worthHaving(with)
	if best := worthHaving(plain); len(best) > 0 {
		// The branch is proposed without spares that the file does not have.
		out.Plain = slices.IndexFunc(out.Options, func(o sheet.Option) bool { return same(o, best[0]) })
		if out.Plain < 0 {
			out.Options = append(out.Options, best[0])
			out.Plain = len(out.Options) - 1
		}
	}
	out.Shown = len(out.Options)
	out.Reach = q.reach(unitsIn, out.Options)
	return out
}

// all is every lay-up found for a branch, with its price.
func (q *Search) all(unitsIn, spares bool) []sheet.Option {
	out := slices.Clone(q.ask(asked{unitsIn, anyOrder, spares}).options)
	whole := func(o sheet.Option) bool { return o.Parted == 0 }
	tail := asked{unitsIn, byTail, spares}
	switch {
	case q.leavers:
		out = append(out, q.ask(asked{unitsIn, asTheyLeave, spares}).options...)
	case q.forks && (q.was(tail) || !slices.ContainsFunc(out, whole)):
		// No lay-up of sizes alone leaves every layer whole: try one branch round another.
		for _, o := range q.ask(tail).options {
			if whole(o) {
				out = append(out, o)
			}
		}
	}
	price(out, q.weight)
	return out
}

// byBranch is how far components run, where all run equally far: the branch with fewest innermost,
// for a layer holds more than those beneath it.
func byBranch(ids []string, r bundle.Ranks, tails []int) map[string]int {
	count := map[int]int{}
	for _, id := range ids {
		count[r.Next[id]]++
	}
	order := slices.Clone(tails)
	slices.SortStableFunc(order, func(a, b int) int { return -cmp.Compare(count[a], count[b]) })
	out := make(map[string]int, len(ids))
	for _, id := range ids {
		out[id] = slices.Index(order, r.Next[id])
	}
	return out
}

// questionOf is what there is to lay, as sizes.
func questionOf(s *sheet.Sheet, i int, r bundle.Ranks, held []bundle.Holding) question {
	q := question{held: slices.Clone(held)}
	for _, id := range s.Branches[i].Components {
		q.ask.Sizes = append(q.ask.Sizes, plan.Size{D: s.Dia(id).Nominal, N: 1, Leaves: r.Depth[id]})
	}
	q.ask.Rules, q.ask.Centres, q.ask.Layers = bundle.PlanRules(s), plan.BuiltCentres, bundle.LikeNow(s, i)
	q.sizes(s, r)
	return q
}

func (q *question) sizes(s *sheet.Sheet, r bundle.Ranks) {
	q.ask.Held = nil
	for _, h := range q.held {
		h.Sizes = nil
		for _, id := range h.Ids {
			h.Sizes = append(h.Sizes, plan.Size{D: s.Dia(id).Nominal, N: 1, Leaves: r.Depth[id]})
		}
		q.ask.Held = append(q.ask.Held, h.Held)
	}
}

// hold keeps components in the centre, beside what is held there already.
func (q *question) hold(s *sheet.Sheet, r bundle.Ranks, ids []string) {
	k := slices.IndexFunc(q.held, func(h bundle.Holding) bool { return h.Layer == 0 })
	if k < 0 {
		q.held, k = append(q.held, bundle.Holding{}), len(q.held)
	}
	q.held[k].Ids = append(slices.Clone(q.held[k].Ids), ids...)
	q.sizes(s, r)
}

// centreUnits is the units that can lie in the centre together: all of them, else
// the shielded ones; none where something held forbids it.
func centreUnits(s *sheet.Sheet, i int, held []bundle.Holding) []string {
	var all, shielded []string
	for _, id := range s.Branches[i].Components {
		if c, ok := s.Index.Component(id); ok && c.Unit {
			all = append(all, id)
			if s.H.Units[c.At].Shield.V {
				shielded = append(shielded, id)
			}
		}
	}
	for _, h := range held {
		lies := func(id string) bool { return slices.Contains(h.Ids, id) }
		if len(all) > 0 && h.Layer == 0 && h.Locked || slices.ContainsFunc(all, lies) {
			return nil
		}
	}
	for _, set := range [][]string{all, shielded} {
		var d []unit.Millimetre
		for _, id := range set {
			d = append(d, s.Dia(id).Nominal)
		}
		if lay.CanBeCentre(d) {
			return set
		}
	}
	return nil
}

// option names the components of a plan; forks says that they part at the far end, and that
// layers which part there count.
func option(s *sheet.Sheet, i int, p plan.Plan, r bundle.Ranks, held []bundle.Holding, spares []sheet.SparePlace,
	weight unit.Millimetre, forks bool) sheet.Option {
	o := sheet.Option{Plan: p}
	o.Layers, o.SpareIn = name(s, i, p, r, held, forks)
	o.Spares = spares[:min(len(o.SpareIn), len(spares))]
	if o.Buried = buriedIn(o.Layers, r); forks {
		o.Parted = parted(o.Layers, r)
	}
	o.Cost = p.Cost + unit.Ratio(float64(weight)*float64(o.Buried))
	return o
}

// name deals components out to the layers of a plan, from the centre outward: what
// is held where it is held, then those that run furthest, those that part together
// one after another. spareIn is the layers that hold a place for a spare. Where a layer parts
// at a fork, layers that stay whole are looked for.
func name(s *sheet.Sheet, i int, p plan.Plan, r bundle.Ranks, held []bundle.Holding, forks bool) (out []model.Layer, spareIn []int) {
	ids := slices.Clone(s.Branches[i].Components) // units first, as Components has them
	together := map[int]int{}
	for _, id := range ids {
		together[r.Way[id].Tail]++
	}
	// Of those that run equally far the larger tail goes further in.
	slices.SortStableFunc(ids, func(a, b string) int {
		ga, gb := r.Way[a].Tail, r.Way[b].Tail
		return cmp.Or(-cmp.Compare(r.Depth[a], r.Depth[b]), -cmp.Compare(together[ga], together[gb]), cmp.Compare(ga, gb))
	})
	isHeld := map[string]bool{}
	for _, h := range held {
		for _, id := range h.Ids {
			isHeld[id] = true
		}
	}
	ids = slices.DeleteFunc(ids, func(id string) bool { return isHeld[id] })
	out, spareIn = deal(s, i, p, ids, r, held, nil)
	if !forks || parted(out, r) == 0 {
		return out, spareIn
	}
	if try, in, ok := whole(s, i, p, ids, r, held); ok && buriedIn(try, r) <= buriedIn(out, r)+parted(out, r) {
		return try, in
	}
	return out, spareIn
}

// deal gives components out to the layers of a plan in their order, beside what is held there;
// from is the branch that each layer goes on into, nil where that is free.
func deal(s *sheet.Sheet, i int, p plan.Plan, ids []string, r bundle.Ranks, held []bundle.Holding, from []int) (out []model.Layer,
	spareIn []int) {
	type kind struct {
		next int
		d    unit.Millimetre
	}
	fixed, left := map[int][]string{}, map[kind][]string{}
	for _, h := range held {
		fixed[h.Layer] = h.Ids
	}
	for _, id := range ids {
		of := kind{d: s.Dia(id).Nominal}
		if from != nil {
			of.next = r.Next[id]
		}
		left[of] = append(left[of], id)
	}
	now := bundle.LayersOf(s, i)
	out = make([]model.Layer, len(p.Layers))
	for k, l := range p.Layers {
		out[k].Of = append(out[k].Of, fixed[k]...)
		for z, d := range l.Sizes {
			n, of := l.N[z], kind{d: d}
			if from != nil {
				of.next = from[k]
			}
			for _, id := range fixed[k] {
				if s.Dia(id).Nominal == d {
					n--
				}
			}
			for ; n > 0; n-- {
				if len(left[of]) == 0 {
					spareIn = append(spareIn, k)
					continue
				}
				out[k].Of = append(out[k].Of, left[of][0])
				left[of] = left[of][1:]
			}
		}
		switch {
		case l.CentreMM > 0:
			out[k].BindMM = model.Some(unit.Written(l.CentreMM - l.Sizes[0]))
		case l.Fillers > 0 && k > 0:
			out[k].Fillers, out[k].FillerMM = model.Some(l.Fillers), model.Some(unit.Written(l.FillerMM))
		}
		if k < len(now) {
			keepHeld(&out[k], now[k])
		}
	}
	return out, spareIn
}

// keepHeld takes over what the builder set on a layer: a locked one as it is, else
// its pins and its lay length.
func keepHeld(out *model.Layer, now model.Layer) {
	if now.Locked.V {
		*out = model.CloneLayers([]model.Layer{now})[0]
		return
	}
	out.Pinned, out.LayMM = slices.Clone(now.Pinned), now.LayMM
}

func buriedIn(layers []model.Layer, r bundle.Ranks) int {
	n, deepest := 0, -1
	for k := len(layers) - 1; k >= 0; k-- {
		for _, id := range layers[k].Of {
			if r.Depth[id] < deepest {
				n++
			}
		}
		for _, id := range layers[k].Of {
			deepest = max(deepest, r.Depth[id])
		}
	}
	return n
}

// mostIdle is how many proposals are kept that no branch has now: what was tried and undone comes
// back without planning, and a day of changes does not fill the memory.
const mostIdle = 200

// Adopt takes a proposal up for the next Build. The map handed on to earlier
// sheets is left as it was.
func Adopt(s *sheet.Sheet, key string, p sheet.Proposal) {
	m := make(map[string]sheet.Proposal, len(s.Proposals)+1)
	maps.Copy(m, s.Proposals)
	m[key] = p
	if len(m) > mostIdle+len(s.Branches) {
		now := map[string]bool{key: true}
		for i := range s.Branches {
			now[bundle.PlanKey(s, i)] = true
		}
		maps.DeleteFunc(m, func(k string, _ sheet.Proposal) bool { return !now[k] })
	}
	s.Proposals = m
}
