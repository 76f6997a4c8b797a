package join

import (
	"slices"

	"contralay/model/wirelist/draft"
)

// stretchesOf gives each wire that goes through bulkheads all its stretches, itself among them: the items of one row of which each begins
// where the one before it ends.
func stretchesOf(items []*draft.Item) map[*draft.Item][]*draft.Item {
	of := map[*draft.Item][]*draft.Item{}
	for k := 0; k < len(items); {
		end := k + 1
		for end < len(items) && goesOn(items[end-1], items[end]) {
			end++
		}
		if end > k+1 {
			for _, it := range items[k:end] {
				of[it] = items[k:end]
			}
		}
		k = end
	}
	return of
}

// goesOn reports whether an item is the next stretch of the wire of another one.
func goesOn(a, b *draft.Item) bool {
	return a.Place == b.Place && a.Signal == b.Signal && a.OwnID == b.OwnID && a.To.Term != nil && a.To.Term == b.From.Term &&
		a.To.Pin == b.From.Pin
}

// besideEachOther reports whether two items go between the same two terminations.
func besideEachOther(a, b *draft.Item) bool {
	return a.From.Term == b.From.Term && a.To.Term == b.To.Term || a.From.Term == b.To.Term && a.To.Term == b.From.Term
}

// sidesOf are the wires of a cable, for each stretch of those that go through bulkheads apart: a cable has one of them on each side, and
// the list does not say on which side it is that cable.
//
//	BH2 way | Signal  | Cable | Inside | Outside
//	A       | Inlet + | C11   | TB4:1  | P11:1
//	B       | Inlet - | C11   | TB4:2  | P11:2
func sidesOf(im *draft.Importer, all []*draft.Item, cable string) (sides [][]*draft.Item) {
	stretches := stretchesOf(im.Items)
	for _, it := range all {
		of, ok := stretches[it]
		k := slices.Index(of, it)
		if !ok {
			if len(sides) == 0 {
				sides = append(sides, nil)
			}
			sides[0] = append(sides[0], it)
			continue
		}
		for len(sides) <= k {
			sides = append(sides, nil)
		}
		sides[k] = append(sides[k], it)
	}
	sides = slices.DeleteFunc(sides, func(side []*draft.Item) bool { return len(side) == 0 })
	if slices.ContainsFunc(sides, func(side []*draft.Item) bool { return len(side) < 2 }) {
		return [][]*draft.Item{all}
	}
	if len(sides) > 1 {
		im.SayOf(sides[0], "a cable through a bulkhead", cable, "a unit on each side; look on which side it is that cable")
	}
	return sides
}
