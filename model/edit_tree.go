package model

import (
	"fmt"
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

// Split parts a branch at a new breakout so far from its from end. The first part
// keeps the branch's id; the second has a new one and the same lay-up and surroundings,
// and each the covers that lie on it; what was set aside and measured stays with the first. Splices of its to
// end that lie toward it lie toward the second part from then on. The error says what
// is allowed.
func (h *Harness) Split(i int, at unit.Millimetre) (*Harness, string, error) {
	b := h.Branches[i]
	if !b.Measured() {
		return h, "", fmt.Errorf("the length of %s is not known yet: give it before you split it", b.ID)
	}
	if !(at > 0) || !(at < b.LengthMM) {
		return h, "", fmt.Errorf("%s is %s mm long: split it between its ends", b.ID, trimmed(b.LengthMM))
	}
	n := *h
	j := Breakout{ID: h.FreeID("J")}
	n.Breakouts = append(slices.Clone(h.Breakouts), j)
	second := b
	second.ID, second.From, second.LengthMM = n.FreeID("R"), j.ID, unit.Written(b.LengthMM-at)
	second.Name, second.Asides, second.AsBuilt = Opt[string]{}, nil, nil
	second.Layers = CloneLayers(b.Layers)
	second.Covers = covered(b.Covers, at, b.LengthMM)
	n.Branches = append(slices.Clone(h.Branches), second)
	first := &n.Branches[i]
	first.To, first.LengthMM = j.ID, at
	first.Covers = covered(b.Covers, 0, at)
	n.Splices = slices.Clone(h.Splices)
	for k := range n.Splices {
		if sp := &n.Splices[k]; sp.Toward.V == b.ID && sp.At == b.To {
			sp.Toward = Some(second.ID)
		}
	}
	return &n, j.ID, nil
}

// covered is the covers of a part of a branch, from one station to another, stations
// counted from its own beginning; what runs on over the cut is left to stop where it
// would by itself.
func covered(all []Cover, from, to unit.Millimetre) []Cover {
	var out []Cover
	for _, c := range all {
		if c.FromMM.Set && c.FromMM.V >= to || c.ToMM.Set && c.ToMM.V <= from {
			continue
		}
		if c.FromMM.V <= from && from > 0 {
			c.FromMM = Opt[unit.Millimetre]{}
		} else if c.FromMM.Set {
			c.FromMM.V = unit.Written(c.FromMM.V - from)
		}
		if c.ToMM.Set && c.ToMM.V >= to {
			c.ToMM = Opt[unit.Millimetre]{}
		} else if c.ToMM.Set {
			c.ToMM.V = unit.Written(c.ToMM.V - from)
		}
		out = append(out, c)
	}
	return out
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

func trimmed(v unit.Millimetre) string { return strconv.FormatFloat(float64(v), 'f', -1, 64) }
