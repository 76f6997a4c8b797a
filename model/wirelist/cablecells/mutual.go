package cablecells

import (
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/value"
)

// partners settles of each table which wires the cells about cables name.
func partners(items []*draft.Item) {
	for from := 0; from < len(items); {
		to := from + 1
		for to < len(items) && items[to].Block == items[from].Block && items[to].Place.Sheet == items[from].Place.Sheet &&
			items[to].Place.File == items[from].Place.File {
			to++
		}
		mutual(items[from:to])
		byNumber(items[from:to])
		from = to
	}
}

// mutual takes the cells of a column of cables for the wires that those of their rows are paired with, where no two cells of a table are
// alike, each names another wire of it, and that one names it in turn, or none: the heading need not say so.
//
//	Wire | Pair wire      Pin | Twist
//	1    | 2              3   | 4
//	2    | 1              4   | 3
func mutual(items []*draft.Item) {
	said := map[string]bool{}
	for _, it := range items {
		if it.Cable == "" {
			continue
		}
		if said[it.Cable] || !value.HasDigit(it.Cable) {
			return // most tables: two wires in one cable
		}
		said[it.Cable] = true
	}
	if len(said) < 2 {
		return
	}
	of := map[string]*draft.Item{}
	for _, it := range items {
		if called := calledBy(it); called != "" {
			if of[called] != nil {
				return
			}
			of[called] = it
		}
	}
	both := false
	for _, it := range items {
		if it.Cable == "" {
			continue
		}
		other := of[it.Cable]
		if other == nil || other == it || other.Cable != "" && other.Cable != calledBy(it) {
			return
		}
		both = both || other.Cable != ""
	}
	if !both {
		return
	}
	for _, it := range items {
		if it.Cable == "" {
			continue
		}
		it.With, it.CueText = append(it.With, it.Cable), it.Cable
		it.Cue.Twisted, it.Cue.Shielded = it.Cue.Twisted || it.Kind.Twisted, it.Cue.Shielded || it.Kind.Shielded
		if of[it.Shield] != nil && it.Shield == it.Cable {
			it.Cue.Shielded, it.Shield = true, "" // one shield over both
		}
		it.Cable, it.Kind = "", value.Gauge{}
	}
}

// calledBy is what another row calls an item: its id, else its cavity.
func calledBy(it *draft.Item) string {
	if it.OwnID != "" {
		return it.OwnID
	}
	return it.From.Pin
}
