package offer

import (
	"slices"

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
			first, met := -1, false
			for _, id := range l.Of {
				next, ok := nextAt(s, i, end, id)
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

// nextAt is the branch a component goes on into at one end of branch i; −1 where it ends
// there. False for what does not run through branch i.
func nextAt(s *sheet.Sheet, i int, end, id string) (int, bool) {
	c, ok := s.Index.Component(id)
	if !ok {
		return 0, false
	}
	path := []int(nil)
	if c.Unit {
		path = s.Units[c.At].Path
	} else {
		path = s.Wires[c.At].Path
	}
	k := slices.Index(path, i)
	if k < 0 {
		return 0, false
	}
	for _, j := range []int{k - 1, k + 1} {
		if j >= 0 && j < len(path) {
			if b := &s.H.Branches[path[j]]; b.From == end || b.To == end {
				return path[j], true
			}
		}
	}
	return -1, true
}
