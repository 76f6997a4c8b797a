package wires

import (
	"cmp"
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
		// The end with the most cavities, of equals the one with the most wires, of those the one that
		// the file lists first: neither a wire more nor the order of the branches turns the tree round.
		root, best := "", -1
		for i := range s.H.Branches {
			if done[i] {
				continue
			}
			b := &s.H.Branches[i]
			if root == "" {
				root = b.From
			}
			for _, end := range []string{b.From, b.To} {
				if t, ok := s.Index.Termination[end]; ok && (best < 0 || before(s, t, best)) {
					root, best = end, t
				}
			}
		}
		if root == "" {
			return out
		}
		walk(root, nil)
	}
}

// before reports whether the tree is rather walked from termination t than from u.
func before(s *sheet.Sheet, t, u int) bool {
	a, b := &s.Terms[t], &s.Terms[u]
	return cmp.Or(cmp.Compare(len(b.Cavities), len(a.Cavities)), cmp.Compare(b.Used, a.Used), cmp.Compare(t, u)) < 0
}
