package planning

import (
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// AddSpare lays a spare in: into layer k of branch i, outermost in the others it
// runs through. Its colour is one that no wire of the branch has.
func AddSpare(s *sheet.Sheet, h *model.Harness, i, k int, p sheet.SparePlace) (*model.Harness, model.Wire) {
	like := &s.H.Wires[p.Like]
	w := model.Wire{ID: h.NextID("SP0"), Signal: model.Some("Spare"), From: model.Some(p.From),
		Spec: like.Spec, Size: like.Size, Colour: model.Some(freeColour(s, h, i)), Amps: model.Some(unit.Ampere(0)),
		Role: model.Some(model.RoleSpare)}
	if p.CappedAt != "" {
		w.CappedAt = model.Some(p.CappedAt)
	} else {
		w.To = model.Some(p.To)
	}
	return h.AddWire(w, slices.DeleteFunc(slices.Clone(p.Path), func(b int) bool { return b == i })).
		EditBranch(i, func(b *model.Branch) { b.AddTo(k, w.ID) }), w
}

// freeColour is white with stripes that no wire laid in the branch has.
func freeColour(s *sheet.Sheet, h *model.Harness, i int) string {
	here := map[string]bool{}
	for _, id := range s.Branches[i].Components {
		here[id] = true
	}
	for _, l := range h.Branches[i].Layers {
		for _, id := range l.Of {
			here[id] = true
		}
	}
	used := map[string]bool{}
	for k := range h.Wires {
		if here[h.Wires[k].ID] {
			used[h.Wires[k].Colour.V] = true
		}
	}
	const digits = "012345678"
	for a := range 9 {
		if c := "9" + digits[a:a+1]; !used[c] {
			return c
		}
	}
	for a := range 9 {
		for b := a + 1; b < 9; b++ {
			if c := "9" + digits[a:a+1] + digits[b:b+1]; !used[c] {
				return c
			}
		}
	}
	return "9"
}
