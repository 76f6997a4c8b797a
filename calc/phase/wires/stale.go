package wires

import (
	"slices"

	"contralay/calc/sheet"
)

// Walk is the tree in the order a person walks it: from the termination with the most
// wires outward, each branch before those beyond it, branches of one place in file
// order; what does not hang on it comes after. Deep is how many branches a branch is
// away, Last whether it is the last at its place.
type Walk struct {
	Branch int
	From   string // the end it is reached by
	To     string
	Deep   int
	Last   []bool // of each branch on the way to it, itself included
}

// Walked is the whole tree.
func Walked(s *sheet.Sheet) []Walk {
	var out []Walk
	done := map[int]bool{}
	var walk func(place string, last []bool)
	walk = func(place string, last []bool) {
		var next []int
		for _, b := range s.Index.Meeting(place) {
			if !done[b] {
				next = append(next, b)
			}
		}
		for n, b := range next {
			if done[b] {
				continue
			}
			done[b] = true
			to := s.Index.Other(b, place)
			way := append(slices.Clone(last), n == len(next)-1)
			out = append(out, Walk{b, place, to, len(last), way})
			walk(to, way)
		}
	}
	for {
		// The end with the most wires; of equals the one that the file lists first, so that
		// the order of its branches does not turn the tree round.
		root, most, listed := "", -1, len(s.Terms)
		for i := range s.H.Branches {
			if done[i] {
				continue
			}
			b := &s.H.Branches[i]
			if root == "" {
				root = b.From
			}
			for _, end := range []string{b.From, b.To} {
				t, ok := s.Index.Termination[end]
				if ok && (s.Terms[t].Used > most || s.Terms[t].Used == most && t < listed) {
					root, most, listed = end, s.Terms[t].Used, t
				}
			}
		}
		if root == "" {
			return out
		}
		walk(root, nil)
	}
}
