package model

import "slices"

// Edits of several things at once.

// EditWires changes several wires. f gets a copy of each.
func (h *Harness) EditWires(at []int, f func(*Wire)) *Harness {
	n := *h
	n.Wires = slices.Clone(h.Wires)
	for _, i := range at {
		changeWire(&n.Wires[i], f)
	}
	return &n
}

// InPlaceOf lays a component of one branch where the first of some others lay there, and takes
// the others out of its layers; id "" only takes them out. A branch that lays none of them stays
// as it is.
func (h *Harness) InPlaceOf(branch int, id string, of []string) *Harness {
	lays := slices.ContainsFunc(h.Branches[branch].Layers, func(l Layer) bool {
		return slices.ContainsFunc(l.Of, func(o string) bool { return slices.Contains(of, o) })
	})
	if !lays {
		return h
	}
	return h.EditBranch(branch, func(b *Branch) {
		was, placed := CloneLayers(b.Layers), id == ""
		for k := range b.Layers {
			for j, o := range b.Layers[k].Of {
				if !placed && slices.Contains(of, o) {
					b.Layers[k].Of[j], placed = id, true
				}
			}
		}
		for _, o := range of {
			b.Take(o)
		}
		b.unwind(was)
	})
}
