package model

import (
	"slices"
	"strconv"

	"contralay/model/unit"
)

// Edits of the tree. New things go to the end of their tables, so that what stands
// there keeps its place and its order round the layers.

// FreeID is the first id of a letter and a number, J1, J2 …, that no termination,
// breakout, splice or branch has.
func (h *Harness) FreeID(letter string) string {
	taken := map[string]bool{}
	for i := range h.Terminations {
		taken[h.Terminations[i].ID] = true
	}
	for i := range h.Breakouts {
		taken[h.Breakouts[i].ID] = true
	}
	for i := range h.Splices {
		taken[h.Splices[i].ID] = true
	}
	for i := range h.Branches {
		taken[h.Branches[i].ID] = true
	}
	for n := 1; ; n++ {
		if id := letter + strconv.Itoa(n); !taken[id] {
			return id
		}
	}
}

// AddLeg puts a branch of a length from a breakout to a new termination with some
// cavities, numbered from 1. It returns the ids of both.
func (h *Harness) AddLeg(at string, length unit.Millimetre, cavities int) (out *Harness, branch, termination string) {
	n := *h
	term := Termination{ID: h.FreeID("X")}
	for c := range cavities {
		term.Cavities = append(term.Cavities, strconv.Itoa(c+1))
	}
	n.Terminations = append(slices.Clone(h.Terminations), term)
	b := Branch{ID: n.FreeID("L"), From: at, To: term.ID, LengthMM: length}
	n.Branches = append(slices.Clone(h.Branches), b)
	return &n, b.ID, term.ID
}

// LayAnew takes the lay-ups of branches away, so that they are proposed; what a layer
// holds fixed (locked, pinned) keeps its branch as it is. It returns how many it took.
func (h *Harness) LayAnew(branches []int) (*Harness, int) {
	n, out := 0, h
	for _, i := range branches {
		if len(h.Branches[i].Layers) == 0 || slices.ContainsFunc(h.Branches[i].Layers,
			func(l Layer) bool { return l.Locked.V || len(l.Pinned) > 0 }) {
			continue
		}
		out = out.EditBranch(i, func(b *Branch) { b.Layers, b.Make = nil, Opt[Make]{} })
		n++
	}
	return out, n
}
