package over

import (
	"cmp"
	"slices"

	"contralay/calc/sheet"
	"contralay/model/unit"
)

// neighbour is a termination and how far it is along the harness.
type neighbour struct {
	term int
	far  unit.Millimetre
}

// near is the terminations less than so far from a place along the harness, in the order of the
// file: it walks no further, so that a long harness costs each of them its neighbourhood alone.
func near(s *sheet.Sheet, place string, within unit.Millimetre) []neighbour {
	var out []neighbour
	met := map[string]bool{place: true}
	var walk func(at string, far unit.Millimetre)
	walk = func(at string, far unit.Millimetre) {
		for _, b := range s.Index.Meeting(at) {
			next, on := s.Index.Other(b, at), far+s.H.Branches[b].LengthMM
			if met[next] || on >= within {
				continue
			}
			met[next] = true
			if t, ok := s.Index.Termination[next]; ok {
				out = append(out, neighbour{t, on})
			}
			walk(next, on)
		}
	}
	walk(place, 0)
	slices.SortFunc(out, func(a, b neighbour) int { return cmp.Compare(a.term, b.term) })
	return out
}
