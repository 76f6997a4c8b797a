package model

import "slices"

// Connect puts a branch between two places that no branch joins; to is "" for a new breakout. Its
// length is not measured yet. It returns the id of the branch.
func (h *Harness) Connect(from, to string) (out *Harness, branch string) {
	n := *h
	if to == "" {
		to = h.FreeID("J")
		n.Breakouts = append(slices.Clone(h.Breakouts), Breakout{ID: to})
	}
	is := func(place string) bool {
		return slices.ContainsFunc(h.Terminations, func(t Termination) bool { return t.ID == place })
	}
	letter := "R" // between two breakouts
	switch {
	case is(to):
		letter = "L"
	case is(from):
		letter = "T"
	}
	b := Branch{ID: n.FreeID(letter), From: from, To: to}
	n.Branches = append(slices.Clone(h.Branches), b)
	return &n, b.ID
}
