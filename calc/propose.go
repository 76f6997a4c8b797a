package calc

import (
	"cmp"
	"encoding/binary"
	"maps"
	"math"
	"slices"

	"contralay/calc/lay"
	"contralay/calc/plan"
	"contralay/model"
	"contralay/model/unit"
)

// PlanKey names the planning question of a branch: its components, their sizes
// and how far each runs, what is held and wished, and the rules. Two branches
// with the same question have one answer.
func (s *Sheet) PlanKey(i int) string {
	if k := s.Branches[i].planKey; k != "" {
		return k
	}
	r := s.ranks(i)
	var buf []byte
	num := func(v float64) { buf = binary.LittleEndian.AppendUint64(buf, math.Float64bits(v)) }
	text := func(t string) { buf = append(append(buf, t...), 0) }
	p := s.planRules()
	for _, v := range []unit.Ratio{p.LayRatio, p.LiftMax, p.LiftTight, p.GapInner, p.GapOuter, p.LumpyAt, p.FillerWeight, p.SpareGain, unit.Ratio(s.Limits.LeaverWeight)} {
		num(float64(v))
	}
	for _, id := range s.Branches[i].Components {
		text(id)
		num(float64(s.dia(id).Nominal))
		num(float64(r.depth[id]))
		text(r.way[id])
	}
	for _, h := range s.held(i) {
		num(float64(h.at))
		for _, id := range h.ids {
			text(id)
		}
		num(float64(h.Fillers))
		num(float64(h.FillerMM))
		num(float64(h.Lay))
		num(float64(h.Bind))
		buf = append(buf, map[bool]byte{true: 1}[h.Locked])
	}
	num(float64(s.likeNow(i)))
	for _, p := range s.sparesFor(i) {
		text(p.From)
		text(p.To)
		num(float64(s.Wires[p.Like].Dia.Nominal))
	}
	b := &s.H.Branches[i]
	for _, w := range []model.Opt[bool]{b.LeaversOut, b.UnitsIn} {
		buf = append(buf, map[bool]byte{true: 1}[w.Or(true)])
	}
	s.Branches[i].planKey = string(buf)
	return s.Branches[i].planKey
}

func (s *Sheet) planRules() plan.Rules {
	l := s.Limits
	return plan.Rules{LayRatio: l.LayRatio, LiftMax: l.LiftMax, LiftTight: l.LiftTight, GapInner: l.GapInner, GapOuter: l.GapOuter,
		LumpyAt: l.LumpyAt, FillerWeight: l.FillerWeight, SpareGain: l.SpareGain}
}

// holding is what the file holds of one layer, by id.
type holding struct {
	at  int
	ids []string
	plan.Held
}

// held is what the builder holds fixed: locked layers, pinned components, and lay
// lengths of their own.
func (s *Sheet) held(i int) []holding {
	var out []holding
	for k, l := range s.layersOf(i) {
		h := holding{at: k, Held: plan.Held{At: k, Lay: l.LayMM.V}}
		switch {
		case l.Locked.V:
			h.ids, h.Locked, h.Fillers, h.FillerMM, h.Bind = l.Of, true, l.Fillers.V, l.FillerMM.V, l.BindMM.V
		case len(l.Pinned) > 0:
			h.ids = l.Pinned
		case l.LayMM.V <= 0:
			continue
		}
		out = append(out, h)
	}
	return out
}

// likeNow is the number of layers a plan must have, or differ from by an even
// number, so that no hand of a locked layer turns; 0 where none is locked.
func (s *Sheet) likeNow(i int) int {
	for _, h := range s.held(i) {
		if h.Locked {
			return len(s.layersOf(i))
		}
	}
	return 0
}

// question is one planning question of a branch with its components by id.
type question struct {
	ask  plan.Ask
	held []holding
}

// Propose plans a branch. Of what it finds it names which component goes into
// which layer: those that run through inside those that leave early, those that
// part together together. The options are ranked with the weight of what is
// buried. It takes some tenths of a second and touches nothing of the sheet.
func (s *Sheet) Propose(i int) Proposal { return s.Search(i, 0, nil) }

// Search is Propose with more effort: it may take many seconds. watch, where
// given, is told what share is done and ends the search by returning false.
func (s *Sheet) Search(i, effort int, watch func(share float64) bool) Proposal {
	r := s.ranks(i)
	b := &s.H.Branches[i]
	leavers, units := b.LeaversOut.Or(true), b.UnitsIn.Or(true)
	differ := false
	for _, id := range s.Branches[i].Components {
		differ = differ || r.depth[id] != r.depth[s.Branches[i].Components[0]]
	}
	weight := s.Limits.LeaverWeight
	if !leavers {
		weight = 0
	}
	spares := s.sparesFor(i)
	held := s.held(i)
	inCentre := s.centreUnits(i, held)
	runs := 2
	if leavers && differ {
		runs++
	}
	if len(spares) > 0 {
		runs += runs - 1
	}
	done := 0
	ask := func(unitsIn, inOrder bool, spares []SparePlace) []Option {
		q := s.question(i, r, held)
		if unitsIn {
			q.hold(s, r, inCentre)
		}
		q.ask.InOrder, q.ask.Spares, q.ask.Effort = inOrder, len(spares), effort
		if len(spares) > 0 {
			q.ask.SpareD = s.Wires[spares[0].Like].Dia.Nominal
		}
		if watch != nil {
			q.ask.Watch = func(share float64) bool { return watch((float64(done) + share) / float64(runs)) }
		}
		var out []Option
		for _, p := range plan.Make(q.ask) {
			out = append(out, s.option(i, p, r, q.held, spares, weight))
		}
		done++
		return out
	}
	all := func(unitsIn bool, spares []SparePlace) []Option {
		out := ask(unitsIn, false, spares)
		if leavers && differ {
			out = append(out, ask(unitsIn, true, spares)...)
		}
		return out
	}
	var out Proposal
	plain := all(units && len(inCentre) > 0, nil)
	if units && len(inCentre) > 0 {
		free := worthHaving(all(false, nil))
		if best := worthHaving(plain); len(best) > 0 && len(free) > 0 && best[0].Plan.Relaxed <= free[0].Plan.Relaxed {
			out.UnitsWith, out.UnitsFree = best[0].Plan.Over, free[0].Plan.Over
			out.UnitsMM, out.UnitsKnown = out.UnitsWith-out.UnitsFree, true
		} else {
			plain, units = free, false // no lay-up has them in the centre
		}
	}
	if leavers && differ {
		if best := worthHaving(plain); len(best) > 0 {
			thin := slices.MinFunc(plain, func(a, b Option) int {
				return cmp.Or(cmp.Compare(a.Plan.Relaxed, b.Plan.Relaxed), cmp.Compare(a.Plan.Cost, b.Plan.Cost))
			})
			out.LeaversWith, out.LeaversFree = best[0].Plan.Over, thin.Plan.Over
			out.LeaversMM, out.LeaversKnown = out.LeaversWith-out.LeaversFree, true
		}
	}
	with := plain
	if len(spares) > 0 {
		with = append(slices.Clone(plain), all(units && len(inCentre) > 0, spares)...)
	}
	out.Options = worthHaving(with)
	if best := worthHaving(plain); len(best) > 0 {
		// The branch is proposed without spares that the file does not have.
		out.Plain = slices.IndexFunc(out.Options, func(o Option) bool { return o.same(best[0]) })
		if out.Plain < 0 {
			out.Options = append(out.Options, best[0])
			out.Plain = len(out.Options) - 1
		}
	}
	return out
}

// question is what there is to lay, as sizes.
func (s *Sheet) question(i int, r ranks, held []holding) question {
	q := question{held: slices.Clone(held)}
	for _, id := range s.Branches[i].Components {
		q.ask.Sizes = append(q.ask.Sizes, plan.Size{D: s.dia(id).Nominal, N: 1, Leaves: r.depth[id]})
	}
	q.ask.Rules, q.ask.Centres, q.ask.Layers = s.planRules(), plan.BuiltCentres, s.likeNow(i)
	q.sizes(s, r)
	return q
}

func (q *question) sizes(s *Sheet, r ranks) {
	q.ask.Held = nil
	for _, h := range q.held {
		h.Sizes = nil
		for _, id := range h.ids {
			h.Sizes = append(h.Sizes, plan.Size{D: s.dia(id).Nominal, N: 1, Leaves: r.depth[id]})
		}
		q.ask.Held = append(q.ask.Held, h.Held)
	}
}

// hold keeps components in the centre, beside what is held there already.
func (q *question) hold(s *Sheet, r ranks, ids []string) {
	k := slices.IndexFunc(q.held, func(h holding) bool { return h.at == 0 })
	if k < 0 {
		q.held, k = append(q.held, holding{}), len(q.held)
	}
	q.held[k].ids = append(slices.Clone(q.held[k].ids), ids...)
	q.sizes(s, r)
}

// centreUnits is the units that can lie in the centre together: all of them, else
// the shielded ones; none where something held forbids it.
func (s *Sheet) centreUnits(i int, held []holding) []string {
	var all, shielded []string
	for _, id := range s.Branches[i].Components {
		c, ok := s.X.Component(id)
		if !ok || !c.Unit {
			continue
		}
		for _, h := range held {
			if slices.Contains(h.ids, id) || h.at == 0 && h.Locked {
				return nil
			}
		}
		all = append(all, id)
		if s.H.Units[c.At].Shield.V {
			shielded = append(shielded, id)
		}
	}
	for _, set := range [][]string{all, shielded} {
		var d []unit.Millimetre
		for _, id := range set {
			d = append(d, s.dia(id).Nominal)
		}
		if lay.CanBeCentre(d) {
			return set
		}
	}
	return nil
}

// option names the components of a plan.
func (s *Sheet) option(i int, p plan.Plan, r ranks, held []holding, spares []SparePlace, weight unit.Millimetre) Option {
	o := Option{Plan: p}
	o.Layers, o.SpareIn = s.name(i, p, r, held)
	o.Spares = spares[:min(len(o.SpareIn), len(spares))]
	o.Buried = buriedIn(o.Layers, r)
	o.Cost = p.Cost + unit.Ratio(float64(weight)*float64(o.Buried))
	return o
}

// name deals components out to the layers of a plan, from the centre outward: what
// is held where it is held, then those that run furthest, those that part together
// one after another. spareIn is the layers that hold a place for a spare.
func (s *Sheet) name(i int, p plan.Plan, r ranks, held []holding) (out []model.Layer, spareIn []int) {
	ids := slices.Clone(s.Branches[i].Components) // units first, as Components has them
	together := map[string]int{}
	for _, id := range ids {
		together[group(r.way[id])]++
	}
	// Of those that run equally far the larger tail goes further in.
	slices.SortStableFunc(ids, func(a, b string) int {
		ga, gb := group(r.way[a]), group(r.way[b])
		return cmp.Or(-cmp.Compare(r.depth[a], r.depth[b]), -cmp.Compare(together[ga], together[gb]), cmp.Compare(ga, gb))
	})
	fixed := map[int][]string{}
	for _, h := range held {
		fixed[h.at] = h.ids
		ids = slices.DeleteFunc(ids, func(id string) bool { return slices.Contains(h.ids, id) })
	}
	now := s.layersOf(i)
	out = make([]model.Layer, len(p.Layers))
	for k, l := range p.Layers {
		out[k].Of = append(out[k].Of, fixed[k]...)
		for z, d := range l.Sizes {
			n := l.N[z]
			for _, id := range fixed[k] {
				if s.dia(id).Nominal == d {
					n--
				}
			}
			for ; n > 0; n-- {
				j := slices.IndexFunc(ids, func(id string) bool { return s.dia(id).Nominal == d })
				if j < 0 {
					spareIn = append(spareIn, k)
					continue
				}
				out[k].Of = append(out[k].Of, ids[j])
				ids = slices.Delete(ids, j, j+1)
			}
		}
		switch {
		case l.CentreMM > 0:
			out[k].BindMM = model.Some(l.CentreMM - l.Sizes[0])
		case l.Fillers > 0 && k > 0:
			out[k].Fillers, out[k].FillerMM = model.Some(l.Fillers), model.Some(l.FillerMM)
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

func buriedIn(layers []model.Layer, r ranks) int {
	n, deepest := 0, -1
	for k := len(layers) - 1; k >= 0; k-- {
		for _, id := range layers[k].Of {
			if r.depth[id] < deepest {
				n++
			}
		}
		for _, id := range layers[k].Of {
			deepest = max(deepest, r.depth[id])
		}
	}
	return n
}

// Adopt takes a proposal up for the next Build. The map handed on to earlier
// sheets is left as it was.
func (s *Sheet) Adopt(key string, p Proposal) {
	m := make(map[string]Proposal, len(s.Proposals)+1)
	maps.Copy(m, s.Proposals)
	m[key] = p
	s.Proposals = m
}
