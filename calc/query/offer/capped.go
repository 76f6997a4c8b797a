package offer

import (
	"contralay/calc/phase/ends"
	"contralay/calc/sheet"
)

// DeadEnd is a place for a spare through branch i that has a cavity at one end only: at
// a termination of the branch's own, or of one on the way to it, with most cavities
// free; it is capped at the other end of the branch. Asked where no spare finds two.
func DeadEnd(s *sheet.Sheet, i, like int) (sheet.SparePlace, bool) {
	best, most := sheet.SparePlace{}, 0
	for t := range s.Terms {
		id := s.H.Terminations[t].ID
		b := &s.H.Branches[i]
		for _, end := range []string{b.From, b.To} {
			way, ok := s.Index.Between(id, end)
			if !ok || len(way) == 0 || way[len(way)-1] != i {
				continue // the branch lies on the far side
			}
			n, first := 0, ""
			for _, c := range s.Terms[t].Free {
				if ends.Takes(s, t, c, s.H.Wires[like].Spec, s.H.Wires[like].Size) {
					if n++; n == 1 {
						first = c
					}
				}
			}
			if n > most {
				best, most = sheet.SparePlace{From: id + ":" + first, CappedAt: end, Path: way, Like: like}, n
			}
		}
	}
	return best, most > 0
}
