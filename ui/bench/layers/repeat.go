package layers

import (
	"fmt"

	"contralay/calc/query/offer"
	"contralay/model"
	"contralay/ui/bench/desk"
)

// laidLikeRows offer the lay-up of a branch that holds the same sizes.
func laidLikeRows(m *desk.Model) []desk.Row {
	var out []desk.Row
	for of := range m.H.Branches {
		ls, ok := offer.LaidLike(m.Sheet, of, m.Branch)
		if !ok || sameLayers(m, ls) {
			continue
		}
		src, hand := &m.H.Branches[of], desk.OuterHand(m.Sheet, &m.H.Branches[of])
		other := hand.Other()
		lay := func(m *desk.Model, hand model.Hand) {
			m.Change(m.H.EditBranch(m.Branch, func(b *model.Branch) {
				b.Layers, b.Make, b.Outer = model.CloneLayers(ls), model.Some(model.MakeLaid), model.Some(hand)
			}), "laid as "+src.ID+", outer layer "+string(hand))
		}
		out = append(out, desk.Row{Key: "as " + src.ID,
			Text:   fmt.Sprintf("lay it like %s  %s", src.ID, aloud(m, m.Sheet.Branches[of].Layers)),
			Detail: fmt.Sprintf("Enter: outer layer %s, the same. +: mirrored, %s", hand, other),
			Enter:  func(m *desk.Model) { lay(m, hand) },
			Step:   func(m *desk.Model, _ int) { lay(m, other) }})
	}
	return out
}
