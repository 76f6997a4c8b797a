package bundle

import (
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
)

// What the lay of a branch is worked out of: as long as these are the same for it and for
// every wire that has a say in it, it is taken over with all that was said of it
// (LayBranches). A branch that changed, but not in what its layers are computed from, still
// keeps them: see key.

// SamePlaces reports whether two harnesses are alike in what bounds a branch: the zones of
// its breakouts, and the units.
func SamePlaces(a, b *model.Harness) bool {
	return sheet.Shares(a.Breakouts, b.Breakouts) && sheet.Shares(a.Units, b.Units)
}

// SameWire reports whether a wire lies in its layers as before: by its size, its colour and
// what it is for.
func SameWire(a, b *model.Wire) bool {
	return a.Spec == b.Spec && a.Size == b.Size && a.Colour == b.Colour && a.Role == b.Role
}

// SameBranch reports whether a branch is to be laid and bent as before.
func SameBranch(a, b *model.Branch) bool {
	return sheet.Shares(a.Layers, b.Layers) && (a.Layers == nil) == (b.Layers == nil) && a.LengthMM == b.LengthMM &&
		sheet.Shares(a.Environment, b.Environment) && a.BendMM == b.BendMM && a.BendDeg == b.BendDeg && a.Supported == b.Supported &&
		a.AmbientC == b.AmbientC && a.Make == b.Make && a.Outer == b.Outer && a.LeaversOut == b.LeaversOut && a.UnitsIn == b.UnitsIn &&
		a.DataApart == b.DataApart
}

// StaysLaid reports whether a branch that the file does not lay may keep its proposal: that
// hangs on free cavities and on colours anywhere.
func StaysLaid(s *sheet.Sheet, i int) bool {
	return !s.Reuse.Prior.Branches[i].Proposed || s.Reuse.All && s.Reuse.Planned
}

// HasASayIn is the branches whose lay a wire has a say in: those it runs through or ran
// through, with the other wires of its unit, for its diameter and twist are theirs; and
// those whose layers name it, for a layer may hold what does not run there.
func HasASayIn(s *sheet.Sheet, k int) []int {
	prior := s.Reuse.Prior
	out := slices.Concat(s.Wires[k].Path, prior.Wires[k].Path)
	id, unit := s.H.Wires[k].ID, ""
	if u, in := s.Index.UnitOf[id]; in {
		unit = s.H.Units[u].ID
		for _, other := range s.H.Units[u].Wires {
			if j, ok := s.Index.Wire[other]; ok {
				out = slices.Concat(out, s.Wires[j].Path, prior.Wires[j].Path)
			}
		}
	}
	for i := range s.H.Branches {
		if slices.ContainsFunc(s.H.Branches[i].Layers, func(l model.Layer) bool {
			return slices.Contains(l.Of, id) || unit != "" && slices.Contains(l.Of, unit)
		}) {
			out = append(out, i)
		}
	}
	return out
}
