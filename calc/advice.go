package calc

import (
	"contralay/model"
)

// Does reports whether a size does for a wire: its current is within what its way
// allows, its circuit drops no more than the shop allows, and the contacts and seals
// at both ends take it. The rest of the loom is as it is; a lay-up is left as it lies.
func (s *Sheet) Does(k int, size string) bool {
	w := s.H.Wires[k]
	if _, ok := s.Cat.Wire(w.Spec, size); !ok || !w.Amps.Set {
		return false
	}
	for _, text := range []string{w.From.V, w.To.V} {
		e, ok := model.ParseEnd(text)
		if t, known := s.X.Termination[e.Termination]; ok && known && !s.Takes(t, e.Cavity, w.Spec, size) {
			return false
		}
	}
	t := Build(s.asLaid().EditWire(k, func(w *model.Wire) { w.Size = size }), s.Cat, s)
	c := &t.Wires[k]
	return c.Bounded && w.Amps.V <= c.Bound.Amps && c.DropKnown && c.Circuit <= s.Limits.DropMaxV
}

// SmallestThatDoes is the thinnest size of the wire's specification that Does; false
// where none does, or no current is entered to judge by.
func (s *Sheet) SmallestThatDoes(k int) (string, bool) {
	if !s.H.Wires[k].Amps.Set {
		return "", false
	}
	for _, size := range s.Cat.Sizes(s.H.Wires[k].Spec) { // thin to thick
		if s.Does(k, size) {
			return size, true
		}
	}
	return "", false
}

// asLaid is the harness with every proposal written into it, so that nothing is
// planned anew when it changes.
func (s *Sheet) asLaid() *model.Harness {
	h := s.H
	for i := range s.Branches {
		if b := &s.Branches[i]; b.Proposed && len(b.As) > 0 {
			as, mk := b.As, b.Make
			h = h.EditBranch(i, func(b *model.Branch) { b.Layers, b.Make = model.CloneLayers(as), model.Some(mk) })
		}
	}
	return h
}
