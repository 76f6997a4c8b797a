package bundle

import (
	"cmp"
	"slices"

	"contralay/calc/phase/ends"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// SparePlaces is up to most places for spares of one wire's spec and size through
// branch i, each with cavities of its own; those between the two terminations
// with most free ones come first.
func SparePlaces(s *sheet.Sheet, i, like, most int) []sheet.SparePlace {
	free := make([][]string, len(s.Terms))
	for t := range s.Terms {
		for _, c := range s.Terms[t].Free {
			if ends.Takes(s, t, c, s.H.Wires[like].Spec, s.H.Wires[like].Size) {
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
			way, there := s.Index.Between(ta, s.H.Terminations[z].ID)
			index := slices.Index(way, i)
			if there && index >= 0 && walk(s, ta, way[:index]) == s.H.Branches[i].From {
				pairs = append(pairs, pair{a, z, way})
			}
		}
	}
	var out []sheet.SparePlace
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
		out = append(out, sheet.SparePlace{From: s.H.Terminations[p.a].ID + ":" + free[p.a][0],
			To: s.H.Terminations[p.z].ID + ":" + free[p.z][0], Path: p.path, Like: like})
		free[p.a], free[p.z] = free[p.a][1:], free[p.z][1:]
	}
	return out
}

// walk is the place a way along branches leads to.
func walk(s *sheet.Sheet, spot string, way []int) string {
	for _, b := range way {
		spot = s.Index.Other(b, spot)
	}
	return spot
}

// SparesFor is what the shop still wants of spares in branch i and both ends have
// cavities for, of the commonest size that has any.
func SparesFor(s *sheet.Sheet, i int) []sheet.SparePlace {
	want := s.Limits.SparesWanted
	for _, id := range s.Branches[i].Components {
		if k, ok := s.Index.Wire[id]; ok && s.H.Wires[k].Role.V == model.RoleSpare {
			want--
		}
	}
	return SparesMore(s, i, want)
}

// SparesMore is up to most places for more spares in branch i, of the commonest size that both ends have cavities for.
func SparesMore(s *sheet.Sheet, i, most int) []sheet.SparePlace {
	if most <= 0 {
		return nil
	}
	count, first := map[unit.Millimetre]int{}, map[unit.Millimetre]int{}
	var sizes []unit.Millimetre
	for _, id := range s.Branches[i].Components {
		c, ok := s.Index.Component(id)
		if !ok || c.Unit {
			continue
		}
		d := s.Dia(id).Nominal
		if count[d]++; count[d] == 1 && d > 0 {
			sizes, first[d] = append(sizes, d), c.At
		}
	}
	slices.SortStableFunc(sizes, func(a, b unit.Millimetre) int {
		return cmp.Or(-cmp.Compare(count[a], count[b]), cmp.Compare(a, b))
	})
	for _, d := range sizes {
		if out := SparePlaces(s, i, first[d], most); len(out) > 0 {
			return out
		}
	}
	return nil
}
