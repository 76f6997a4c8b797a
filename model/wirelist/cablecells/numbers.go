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
	lead, of := "", map[string]*draft.Item{}
	for k, it := range items {
		letters := strings.TrimRight(it.OwnID, "0123456789")
		if letters == "" || letters == it.OwnID || k > 0 && letters != lead || it.Counted != "" {
			return // most tables
		}
		lead = letters
		of[strings.TrimLeft(it.OwnID[len(letters):], "0")] = it
	}
	for _, it := range items {
		for k, called := range it.With {
			other := of[strings.TrimLeft(called, "0")]
			if other == nil || strings.Trim(called, "0123456789") != "" || inCavity(items, it, called, other) {
				continue
			}
			it.With[k] = other.OwnID
		}
	}
}

// inCavity reports whether a wire other than one is in the cavity of a number, on the connector that an item starts at.
func inCavity(items []*draft.Item, it *draft.Item, number string, other *draft.Item) bool {
	for _, o := range items {
		if o != other && o.From.Term == it.From.Term && o.From.Pin == number {
			return true
		}
	}
	return false
}
