package offer

import (
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
)

// Broken is how many layers of a lay-up of branch i do not go on whole where it meets
// others: at a breakout some of their components part from the rest. A layer that ends
// whole, or goes on whole, can be laid through; one that is broken is sorted there.
// Counted at each end that is a breakout.
func Broken(s *sheet.Sheet, i int, layers []model.Layer) int {
	n := 0
	for _, end := range []string{s.H.Branches[i].From, s.H.Branches[i].To} {
		if _, ok := s.Index.Breakout[end]; !ok {
			continue
		}
		for _, l := range layers {
			var first int // branch that the first of them goes on in
			met := false
			for _, id := range l.Of {
				next, ok := bundle.NextAt(s, i, end, id)
				if !ok {
					continue
				}
				if met && next != first {
					n++
					break
				}
				first, met = next, true
			}
		}
	}
	return n
}
