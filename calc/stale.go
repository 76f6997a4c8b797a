package calc

import "slices"

// Stale is the branches whose lay-up in the file does not hold what runs through them:
// something is in no layer, or lies there and runs elsewhere. They are left as they are
// until somebody lays them anew.
func (s *Sheet) Stale() []int {
	var out []int
	for i := range s.Branches {
		if s.layersOf(i) == nil {
			continue
		}
		var laid []string
		for _, l := range s.H.Branches[i].Layers {
			laid = append(laid, l.Of...)
		}
		if len(without(s.Branches[i].Components, laid)) > 0 || len(without(laid, s.Branches[i].Components)) > 0 {
			out = append(out, i)
		}
	}
	return out
}

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
func (s *Sheet) Walked() []Walk {
	var out []Walk
	done := map[int]bool{}
	var walk func(at string, last []bool)
	walk = func(at string, last []bool) {
		var next []int
		for _, b := range s.X.Meeting(at) {
			if !done[b] {
				next = append(next, b)
			}
		}
		for n, b := range next {
			if done[b] {
				continue
			}
			done[b] = true
			to := s.X.Other(b, at)
			way := append(slices.Clone(last), n == len(next)-1)
			out = append(out, Walk{b, at, to, len(last), way})
			walk(to, way)
		}
	}
	for {
		root, most := "", -1
		for i := range s.H.Branches {
			if done[i] {
				continue
			}
			b := &s.H.Branches[i]
			if root == "" {
				root = b.From
			}
			for _, end := range []string{b.From, b.To} {
				if t, ok := s.X.Termination[end]; ok && s.Terms[t].Used > most {
					root, most = end, s.Terms[t].Used
				}
			}
		}
		if root == "" {
			return out
		}
		walk(root, nil)
	}
}
