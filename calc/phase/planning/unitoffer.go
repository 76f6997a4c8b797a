package planning

import (
	"cmp"
	"slices"

	"contralay/calc/formula/lay"
	"contralay/calc/formula/plan"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// UnitOffer is loose wires that would lie rounder made up into a unit.
type UnitOffer struct {
	Wires   []string
	Build   model.UnitBuild
	Over    unit.Millimetre
	Fillers int // of the best lay-up with it
	Counts  []int
	Plan    plan.Plan // that lay-up
	was     plan.Plan
}

// Was is the best lay-up without the unit.
func (o UnitOffer) Was() plan.Plan { return o.was }

var unitBuilds = []struct {
	n    int
	name model.UnitBuild
}{{2, model.BuildPair}, {3, model.BuildTriple}, {4, model.BuildQuad}}

// UnitOffers tries two to four loose wires of one size that run the same way, made
// up into a unit, and gives those with which the best lay-up has fewer fillers or
// fewer lumpy layers and costs less; best first. A unit's diameter is that of its
// wires in contact. It plans once for each, so it belongs beside the screen.
func UnitOffers(s *sheet.Sheet, i int) []UnitOffer {
	b := &s.Branches[i]
	if b.Make != model.MakeLaid {
		return nil
	}
	r := bundle.RanksOf(s, i)
	type bunch struct {
		way string
		d   unit.Millimetre
	}
	loose := map[bunch][]string{}
	var order []bunch
	for _, id := range b.Components {
		c, ok := s.Index.Component(id)
		d := s.Dia(id).Nominal
		if !ok || d <= 0 {
			return nil
		}
		// The wires of a unit share their whole path, both ends at one connector.
		if c.Unit || s.H.Wires[c.At].Role.V == model.RoleSpare {
			continue
		}
		k := bunch{endsOf(s, c.At), d}
		if loose[k] = append(loose[k], id); len(loose[k]) == 1 {
			order = append(order, k)
		}
	}
	held := bundle.Held(s, i)
	best := func(q question) (plan.Plan, bool) {
		ps := plan.Make(q.ask)
		if len(ps) == 0 || ps[0].Relaxed != plan.Keeps {
			return plan.Plan{}, false
		}
		return ps[0], true
	}
	now, keeps := best(questionOf(s, i, r, held))
	var out []UnitOffer
	for _, k := range order {
		for _, u := range unitBuilds {
			if len(loose[k]) < u.n || len(b.Components)-u.n+1 < s.Limits.LaidFrom {
				continue
			}
			ids := loose[k][:u.n]
			if slices.ContainsFunc(held, func(h bundle.Holding) bool {
				return slices.ContainsFunc(ids, func(id string) bool { return slices.Contains(h.Ids, id) })
			}) {
				continue
			}
			over := lay.Centre(slices.Repeat([]unit.Millimetre{k.d}, u.n)).Over
			q := questionOf(s, i, r, held)
			left := u.n
			q.ask.Sizes = slices.DeleteFunc(q.ask.Sizes, func(z plan.Size) bool {
				if left > 0 && z.D == k.d {
					left--
					return true
				}
				return false
			})
			q.ask.Sizes = append(q.ask.Sizes, plan.Size{D: over, N: 1, Leaves: r.Depth[ids[0]]})
			p, ok := best(q)
			if !ok || keeps && (p.Cost >= now.Cost || p.Fillers >= now.Fillers && p.Lumpy >= now.Lumpy) {
				continue
			}
			o := UnitOffer{Wires: ids, Build: u.name, Over: p.Over, Fillers: p.Fillers, Plan: p, was: now}
			for n, l := range p.Layers {
				c := l.Count()
				if n > 0 {
					c += l.Fillers
				}
				o.Counts = append(o.Counts, c)
			}
			out = append(out, o)
		}
	}
	slices.SortStableFunc(out, func(a, b UnitOffer) int {
		return cmp.Or(cmp.Compare(a.Fillers, b.Fillers), cmp.Compare(a.Over, b.Over))
	})
	return out[:min(len(out), 3)]
}

// endsOf names the two places a wire runs between, whichever way it is written.
func endsOf(s *sheet.Sheet, w int) string {
	a, z := place(s.H.Wires[w].From.V), place(s.H.Wires[w].To.V)
	if z < a {
		a, z = z, a
	}
	return a + "\x00" + z
}

func place(end string) string {
	for i := range end {
		if end[i] == ':' {
			return end[:i]
		}
	}
	return end
}
