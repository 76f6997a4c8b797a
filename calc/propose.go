package calc

import (
	"cmp"
	"encoding/binary"
	"maps"
	"math"
	"slices"

	"contralay/calc/plan"
	"contralay/model"
	"contralay/model/unit"
)

// PlanKey names the planning question of a branch: its components, their sizes
// and how far each runs, and the rules. Two branches with the same question have
// one answer.
func (s *Sheet) PlanKey(i int) string {
	if k := s.Branches[i].planKey; k != "" {
		return k
	}
	r := s.ranks(i)
	var buf []byte
	num := func(v float64) { buf = binary.LittleEndian.AppendUint64(buf, math.Float64bits(v)) }
	p := s.planRules()
	for _, v := range []unit.Ratio{p.LayRatio, p.LiftMax, p.LiftTight, p.GapInner, p.GapOuter, p.LumpyAt, p.FillerWeight, p.SpareGain, unit.Ratio(s.Limits.LeaverWeight)} {
		num(float64(v))
	}
	for _, id := range s.Branches[i].Components {
		buf = append(append(buf, id...), 0)
		num(float64(s.dia(id).Nominal))
		num(float64(r.depth[id]))
	}
	s.Branches[i].planKey = string(buf)
	return s.Branches[i].planKey
}

func (s *Sheet) planRules() plan.Rules {
	l := s.Limits
	return plan.Rules{LayRatio: l.LayRatio, LiftMax: l.LiftMax, LiftTight: l.LiftTight, GapInner: l.GapInner, GapOuter: l.GapOuter,
		LumpyAt: l.LumpyAt, FillerWeight: l.FillerWeight, SpareGain: l.SpareGain}
}

// Propose plans a branch. It invents no spare; it names which component goes
// into which layer, those that run through inside those that leave early, units
// before single wires. The options are ranked with the weight of what is buried.
// It takes up to a second and touches nothing of the sheet.
func (s *Sheet) Propose(i int) Proposal {
	count := map[unit.Millimetre]int{}
	for _, id := range s.Branches[i].Components {
		if d := s.dia(id).Nominal; d > 0 {
			count[d]++
		}
	}
	var sizes []plan.Size
	for _, d := range slices.Sorted(maps.Keys(count)) {
		sizes = append(sizes, plan.Size{D: d, N: count[d]})
	}
	plans := plan.Make(plan.Ask{Sizes: sizes, Rules: s.planRules(), Centres: plan.UnequalCentres})
	var out Proposal
	r := s.ranks(i)
	for _, p := range plans {
		o := Option{Plan: p, Layers: s.name(i, p, r)}
		o.Buried = buriedIn(o.Layers, r)
		o.Cost = p.Cost + unit.Ratio(float64(s.Limits.LeaverWeight)*float64(o.Buried))
		out.Options = append(out.Options, o)
	}
	slices.SortStableFunc(out.Options, func(a, b Option) int { return cmp.Compare(a.Cost, b.Cost) })
	return out
}

// name deals components out to the layers of a plan, from the centre outward.
func (s *Sheet) name(i int, p plan.Plan, r ranks) []model.Layer {
	ids := slices.Clone(s.Branches[i].Components) // units first, as Components has them
	slices.SortStableFunc(ids, func(a, b string) int { return -cmp.Compare(r.depth[a], r.depth[b]) })
	out := make([]model.Layer, len(p.Layers))
	for k, l := range p.Layers {
		for z, d := range l.Sizes {
			for n := 0; n < l.N[z]; n++ {
				j := slices.IndexFunc(ids, func(id string) bool { return s.dia(id).Nominal == d })
				if j < 0 {
					break
				}
				out[k].Of = append(out[k].Of, ids[j])
				ids = slices.Delete(ids, j, j+1)
			}
		}
		if l.Fillers > 0 && k > 0 {
			out[k].Fillers, out[k].FillerMM = model.Some(l.Fillers), model.Some(l.FillerMM)
		}
	}
	return out
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
