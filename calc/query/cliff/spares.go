package cliff

import (
	"cmp"
	"fmt"
	"slices"

	"contralay/calc/phase/bundle"
	"contralay/calc/phase/ends"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// spareRoom is the places for up to Reach more spares through branch i, of the commonest size that
// has any, and a wire of that size; −1 where there is no single wire.
func spareRoom(s *sheet.Sheet, i int) (places []sheet.SparePlace, like int) {
	like = -1
	for _, k := range bySize(s, i) {
		if like < 0 {
			like = k
		}
		if places := bundle.SparePlaces(s, i, k, Reach); len(places) > 0 {
			return places, k
		}
	}
	return nil, like
}

// bySize is one single wire of each size in branch i, the commonest size first, of two the smaller.
func bySize(s *sheet.Sheet, i int) []int {
	count, first := map[unit.Millimetre]int{}, map[unit.Millimetre]int{}
	var sizes []unit.Millimetre
	for _, id := range s.Branches[i].Components {
		c, ok := s.Index.Component(id)
		if !ok || c.Unit || !s.Dia(id).Known() {
			continue
		}
		d := s.Dia(id).Nominal
		if count[d]++; count[d] == 1 {
			sizes, first[d] = append(sizes, d), c.At
		}
	}
	slices.SortStableFunc(sizes, func(a, b unit.Millimetre) int {
		return cmp.Or(-cmp.Compare(count[a], count[b]), cmp.Compare(a, b))
	})
	var out []int
	for _, d := range sizes {
		out = append(out, first[d])
	}
	return out
}

// noRoom says why no spare can be added to branch i.
func noRoom(s *sheet.Sheet, i int) string {
	sizes := bySize(s, i)
	if len(sizes) == 0 {
		return "No single wire of a known size runs here: there is nothing a spare could be like"
	}
	like := &s.H.Wires[sizes[0]]
	for _, place := range []string{s.H.Branches[i].From, s.H.Branches[i].To} {
		free, takes := false, false
		for t := range s.Terms {
			way, there := s.Index.Between(s.H.Terminations[t].ID, place)
			if !there || slices.Contains(way, i) { // it lies at the other end
				continue
			}
			for _, c := range s.Terms[t].Free {
				free, takes = true, takes || ends.Takes(s, t, c, like.Spec, like.Size)
			}
		}
		switch {
		case !free:
			return fmt.Sprintf("No spare can be added: no cavity is free at the %s end", place)
		case !takes:
			return fmt.Sprintf("No spare can be added: no free cavity at the %s end takes size %s", place,
				catalogue.CanonicalSize(like.Size))
		}
	}
	return "No spare can be added: no way leads through here from one free cavity to another"
}
