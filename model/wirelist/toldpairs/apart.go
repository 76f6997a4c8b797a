package toldpairs

import (
	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/draft"
)

// Apart parts the wires under one mark of a pair by the connector that they start at, where each has as many as the mark says: lists
// count the pairs of every plug from one. More wires than that under one mark are kept as one unit, and a person is told to look.
//
//	J1:1 | CAN H   | TP1        J2:1 | Crank + | TP1
//	J1:2 | CAN L   | TP1        J2:2 | Crank - | TP1
func Apart(im *draft.Importer, sides [][]*draft.Item, mark string) (out [][]*draft.Item) {
	n := cable.Words(mark).Conductors
	for _, side := range sides {
		if n < 2 || len(side) <= n {
			out = append(out, side)
			continue
		}
		at := map[*draft.Term][]*draft.Item{}
		var order []*draft.Term
		for _, it := range side {
			if at[it.From.Term] == nil {
				order = append(order, it.From.Term)
			}
			at[it.From.Term] = append(at[it.From.Term], it)
		}
		whole := len(order) > 1
		for _, t := range order {
			whole = whole && t != nil && len(at[t]) == n
		}
		if !whole {
			im.SayOf(side, "more wires than the mark of a pair says", mark, "made one unit of them all; say which wires belong together")
			out = append(out, side)
			continue
		}
		im.SayOf(side, "one mark of a pair at several connectors", mark, "a unit at each; say so if they are one")
		for _, t := range order {
			out = append(out, at[t])
		}
	}
	return out
}
