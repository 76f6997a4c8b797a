package calc

import (
	"cmp"
	"slices"

	"contralay/model"
	"contralay/model/unit"
)

// SparePlace is where a spare could run: a free cavity at both ends that take the
// wire, and the branches between them.
type SparePlace struct {
	From, To string // TERMINATION:CAVITY; From lies on the from side of the branch
	CappedAt string // where it is dead-ended, To being ""
	Path     []int
	Like     int // wire whose spec and size it takes
}

// SparePlaces is up to most places for spares of one wire's spec and size through
// branch i, each with cavities of its own; those between the two terminations
// with most free ones come first.
func (s *Sheet) SparePlaces(i, like, most int) []SparePlace {
	free := make([][]string, len(s.Terms))
	for t := range s.Terms {
		for _, c := range s.Terms[t].Free {
			if s.Takes(t, c, s.H.Wires[like].Spec, s.H.Wires[like].Size) {
				free[t] = append(free[t], c)
			}
		}
	}
	type pair struct {
		a, z int
		path []int
	}
	var pairs []pair
	for a := range free {
		for z := range free {
			if a == z || len(free[a]) == 0 || len(free[z]) == 0 {
				continue
			}
			ta := s.H.Terminations[a].ID
			way, there := s.X.Between(ta, s.H.Terminations[z].ID)
			at := slices.Index(way, i)
			if there && at >= 0 && s.walk(ta, way[:at]) == s.H.Branches[i].From {
				pairs = append(pairs, pair{a, z, way})
			}
		}
	}
	var out []SparePlace
	for len(out) < most {
		best, n := -1, 0
		for k, p := range pairs {
			if m := min(len(free[p.a]), len(free[p.z])); m > n {
				best, n = k, m
			}
		}
		if best < 0 {
			break
		}
		p := pairs[best]
		out = append(out, SparePlace{From: s.H.Terminations[p.a].ID + ":" + free[p.a][0], To: s.H.Terminations[p.z].ID + ":" + free[p.z][0], Path: p.path, Like: like})
		free[p.a], free[p.z] = free[p.a][1:], free[p.z][1:]
	}
	return out
}

// walk is the place a way along branches leads to.
func (s *Sheet) walk(at string, way []int) string {
	for _, b := range way {
		at = s.X.Other(b, at)
	}
	return at
}

// sparesFor is what the shop still wants of spares in branch i and both ends have
// cavities for, of the commonest size that has any.
func (s *Sheet) sparesFor(i int) []SparePlace {
	want := s.Limits.SparesWanted
	count, first := map[unit.Millimetre]int{}, map[unit.Millimetre]int{}
	var sizes []unit.Millimetre
	for _, id := range s.Branches[i].Components {
		c, ok := s.X.Component(id)
		if !ok || c.Unit {
			continue
		}
		if s.H.Wires[c.At].Role.V == "spare" {
			want--
		}
		d := s.dia(id).Nominal
		if count[d]++; count[d] == 1 && d > 0 {
			sizes, first[d] = append(sizes, d), c.At
		}
	}
	if want <= 0 {
		return nil
	}
	slices.SortStableFunc(sizes, func(a, b unit.Millimetre) int {
		return cmp.Or(-cmp.Compare(count[a], count[b]), cmp.Compare(a, b))
	})
	for _, d := range sizes {
		if out := s.SparePlaces(i, first[d], want); len(out) > 0 {
			return out
		}
	}
	return nil
}

// AddSpare lays a spare in: into layer k of branch i, outermost in the others it
// runs through. Its colour is one that no wire of the branch has.
func (s *Sheet) AddSpare(h *model.Harness, i, k int, p SparePlace) (*model.Harness, model.Wire) {
	like := &s.H.Wires[p.Like]
	w := model.Wire{ID: h.NextID("SP0"), Signal: model.Some("Spare"), From: model.Some(p.From),
		Spec: like.Spec, Size: like.Size, Colour: model.Some(s.freeColour(h, i)), Amps: model.Some(unit.Ampere(0)), Role: model.Some("spare")}
	if p.CappedAt != "" {
		w.CappedAt = model.Some(p.CappedAt)
	} else {
		w.To = model.Some(p.To)
	}
	return h.AddWire(w, slices.DeleteFunc(slices.Clone(p.Path), func(b int) bool { return b == i })).
		EditBranch(i, func(b *model.Branch) { b.Layers[k].Of = append(b.Layers[k].Of, w.ID) }), w
}

// freeColour is white with stripes that no wire laid in the branch has.
func (s *Sheet) freeColour(h *model.Harness, i int) string {
	here := map[string]bool{}
	for _, id := range s.Branches[i].Components {
		here[id] = true
	}
	for _, l := range h.Branches[i].Layers {
		for _, id := range l.Of {
			here[id] = true
		}
	}
	used := map[string]bool{}
	for k := range h.Wires {
		if here[h.Wires[k].ID] {
			used[h.Wires[k].Colour.V] = true
		}
	}
	const digits = "012345678"
	for a := range 9 {
		if c := "9" + digits[a:a+1]; !used[c] {
			return c
		}
	}
	for a := range 9 {
		for b := a + 1; b < 9; b++ {
			if c := "9" + digits[a:a+1] + digits[b:b+1]; !used[c] {
				return c
			}
		}
	}
	return "9"
}
