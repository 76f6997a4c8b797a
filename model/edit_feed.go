package model

import (
	"slices"
	"strconv"
)

// EditFeed changes one feed. f gets a copy and must replace, not change, its list.
func (h *Harness) EditFeed(i int, f func(*Feed)) *Harness {
	n := *h
	n.Feeds = slices.Clone(h.Feeds)
	f(&n.Feeds[i])
	return &n
}

// EditUnit changes one unit. f gets a copy and must replace, not change, its list.
func (h *Harness) EditUnit(i int, f func(*Unit)) *Harness {
	n := *h
	n.Units = slices.Clone(h.Units)
	f(&n.Units[i])
	return &n
}

// EditSplice changes one splice. f gets a copy.
func (h *Harness) EditSplice(i int, f func(*Splice)) *Harness {
	n := *h
	n.Splices = slices.Clone(h.Splices)
	f(&n.Splices[i])
	return &n
}

// Feed puts a wire on a feed, which is the only one it is on then; −1 takes it off.
func (h *Harness) Feed(wire string, to int) *Harness {
	n := *h
	n.Feeds = slices.Clone(h.Feeds)
	for i := range n.Feeds {
		on := slices.Contains(n.Feeds[i].Wires, wire)
		switch {
		case on && i != to:
			n.Feeds[i].Wires = slices.DeleteFunc(slices.Clone(n.Feeds[i].Wires), func(id string) bool { return id == wire })
		case !on && i == to:
			n.Feeds[i].Wires = append(slices.Clone(n.Feeds[i].Wires), wire)
		}
	}
	return &n
}

// AddFeed appends a feed under the next free number, F1 the first, with one wire on it.
func (h *Harness) AddFeed(f Feed, wire string) *Harness {
	for n := 1; ; n++ {
		f.ID = "F" + strconv.Itoa(n)
		if !slices.ContainsFunc(h.Feeds, func(o Feed) bool { return o.ID == f.ID }) {
			break
		}
	}
	n := *h
	n.Feeds = append(slices.Clone(h.Feeds), f)
	return n.Feed(wire, len(n.Feeds)-1)
}

// RemoveFeed takes a feed away; its wires stay.
func (h *Harness) RemoveFeed(i int) *Harness {
	n := *h
	n.Feeds = slices.Delete(slices.Clone(h.Feeds), i, i+1)
	return &n
}
