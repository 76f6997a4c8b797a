package wires

import (
	"fmt"
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
)

// FindPaths derives each wire's way through the tree, and says which have none.
func FindPaths(s *sheet.Sheet) {
	for i := range s.H.Wires {
		w, out := &s.H.Wires[i], &s.Wires[i]
		if s.Reuse.Wire(i) && s.Reuse.Prior.Wires[i].HasPath {
			out.Path, out.HasPath = s.Reuse.Prior.Wires[i].Path, true
			continue
		}
		out.Path, out.HasPath = Path(s, w)
		if out.HasPath {
			continue
		}
		_, a := s.Index.End(w.From.V)
		_, b := s.Index.End(w.To.V)
		switch {
		case !a && !b:
			s.Say(sheet.Stop, "wire.path", w.ID, "It has no ends yet: give the cavity or splice at both")
		case !a || !b:
			s.Say(sheet.Stop, "wire.path", w.ID,
				"It has one end only: give the cavity or splice at the other. A spare may be capped at a place on its way (capped_at)")
		default:
			s.Say(sheet.Stop, "wire.path", w.ID, fmt.Sprintf("No branch leads from %s to %s", w.From.V, w.To.V))
		}
	}
	for i := range s.H.Units {
		unitPath(s, i)
	}
}

// Path is the branches from one end of a wire to the other, in their order; false where there is no way.
func Path(s *sheet.Sheet, w *model.Wire) ([]int, bool) {
	from, to, ok := s.Index.Places(w)
	if !ok {
		return nil, false
	}
	return s.Index.Between(from, to)
}

// unitPath is the way its wires share; a unit whose wires part is a stop.
func unitPath(s *sheet.Sheet, i int) {
	u := &s.H.Units[i]
	for n, id := range u.Wires {
		k, ok := s.Index.Wire[id]
		if !ok || !s.Wires[k].HasPath {
			return
		}
		p := slices.Clone(s.Wires[k].Path)
		if n == 0 {
			s.Units[i].Path, s.Units[i].HasPath = p, true
			continue
		}
		if !SamePath(s.Units[i].Path, p) {
			s.Say(sheet.Stop, "unit.path", u.ID, fmt.Sprintf("Its wires %s and %s do not run the same way", u.Wires[0], id))
			return
		}
	}
}

// SamePath reports whether two ways are one, in whichever direction each is written.
func SamePath(a, b []int) bool {
	if slices.Equal(a, b) {
		return true
	}
	c := slices.Clone(b)
	slices.Reverse(c)
	return slices.Equal(a, c)
}
