package whatif

import (
	"fmt"
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
)

// hand is the other hand of the outer layer; the layers beneath alternate.
type hand model.Hand

func hands(s *sheet.Sheet, i int) []Kind {
	if s.Branches[i].Make == model.MakeStraight || len(s.Branches[i].Components) < 2 {
		return nil
	}
	is := func(h model.Hand) bool { return hand(h).present(s, i) }
	k := Kind{ID: "hand", Name: "outer layer", Now: slices.IndexFunc(model.Hands, is)}
	for _, h := range model.Hands {
		k.Values = append(k.Values, Value{Key: string(h), Says: string(h), change: hand(h)})
	}
	return []Kind{k}
}

func (c hand) present(s *sheet.Sheet, i int) bool {
	return s.H.Branches[i].Outer.Or(s.Limits.Outer) == model.Hand(c)
}

func (c hand) make(s *sheet.Sheet, i int) (trial, error) {
	for k, l := range s.H.Branches[i].Layers {
		if l.Locked.V {
			return trial{}, fmt.Errorf("%s is locked and would turn the other way: unlock it first", model.LayerName(k))
		}
	}
	return trial{h: s.H.EditBranch(i, func(b *model.Branch) { b.Outer = model.Some(model.Hand(c)) })}, nil
}
