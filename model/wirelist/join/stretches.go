package join

import "contralay/model/wirelist/draft"

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
