package cablecells

import (
	"strings"

	"contralay/model/wirelist/draft"
)

// byNumber writes out the ids of the wires that a row pairs its own with by their numbers alone, where all ids of the table are the same
// letters and a number, no wire is called by the number, and no other one is in the cavity of that number.
//
//	Wire | Twisted with
//	W1   | 2
//	W2   | 1
func byNumber(items []*draft.Item) {
	lead, of, at := "", map[string]*draft.Item{}, map[draft.End]*draft.Item{}
	for k, it := range items {
		letters := strings.TrimRight(it.OwnID, "0123456789")
		if letters == "" || letters == it.OwnID || k > 0 && letters != lead || it.Counted != "" {
			return // most tables
		}
		lead = letters
		of[strings.TrimLeft(it.OwnID[len(letters):], "0")] = it
		at[draft.End{Term: it.From.Term, Pin: it.From.Pin}] = it
	}
	for _, it := range items {
		for k, called := range it.With {
			other := of[strings.TrimLeft(called, "0")]
			if other == nil || strings.Trim(called, "0123456789") != "" {
				continue
			}
			if there := at[draft.End{Term: it.From.Term, Pin: called}]; there != nil && there != other {
				continue // it could be meant
			}
			it.With[k] = other.OwnID
		}
	}
}
