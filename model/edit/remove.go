package edit

import (
	"fmt"
	"slices"

	"contralay/model"
)

// Remove takes a thing out of a harness, whatever names it, and says what is left without an
// end or a way.
//
// Wires stay where only one of their ends is taken away, and in the layers they lie in: the
// sheet asks for those to be laid again. A wire that has lost the last of its ends goes too, and
// a unit that has lost the last of its wires.
//
// A termination or a breakout with one branch takes that branch along. A termination with
// several becomes a breakout, since they meet there; a breakout with two makes one branch of
// them; a breakout with more cannot go before they do. A branch takes along what hangs on its
// to end: RemoveBranch has the choice. The wires of a feed and of a unit stay.
//
// What a layer set aside, an independent list or the record of a build name is left there.
func Remove(h *model.Harness, noun Noun, id string) (out *model.Harness, says []string, err error) {
	i, err := at(h, noun, id)
	if err != nil {
		return h, nil, err
	}
	switch noun {
	case Branch:
		return RemoveBranch(h, id, h.Branches[i].From)
	case Termination, Breakout:
		return removePlace(h, noun, id)
	}
	n := without(h, gone{thing{noun, id}: true})
	return n, Lost(h, n, id), nil
}

// RemoveBranch takes a branch out with all that hangs on it: stays is the end of it whose side
// of the tree is kept.
func RemoveBranch(h *model.Harness, id, stays string) (out *model.Harness, says []string, err error) {
	i, err := at(h, Branch, id)
	if err != nil {
		return h, nil, err
	}
	b := &h.Branches[i]
	if stays != b.From && stays != b.To {
		return h, nil, fmt.Errorf("%s does not end at %q: it runs from %s to %s", id, stays, b.From, b.To)
	}
	g := gone{thing{Branch, id}: true}
	x := model.NewIndex(h)
	for p := range beyond(x, i, stays) {
		g[thing{Termination, p}], g[thing{Breakout, p}] = true, true
		for _, k := range x.Meeting(p) {
			g[thing{Branch, h.Branches[k].ID}] = true
		}
	}
	n := without(h, g)
	return n, Lost(h, n, id), nil
}

func removePlace(h *model.Harness, noun Noun, id string) (*model.Harness, []string, error) {
	x := model.NewIndex(h)
	meet := x.Meeting(id)
	switch {
	case len(meet) == 1:
		n, _, err := RemoveBranch(h, h.Branches[meet[0]].ID, x.Other(meet[0], id))
		return n, Lost(h, n, id), err
	case noun == Termination && len(meet) > 1:
		n, err := ToBreakout(h, id, true)
		says := Lost(h, n, id)
		return n, append([]string{fmt.Sprintf("%s is a breakout now, because %s meet there", id, branchesOf(h, meet))}, says...), err
	case len(meet) == 2:
		n, says, err := join(without(h, gone{thing{Breakout, id}: true}), id)
		if err != nil {
			return h, nil, err
		}
		return n, append(Lost(h, n, id, h.Branches[meet[1]].ID), says...), nil
	case len(meet) > 2:
		return h, nil, fmt.Errorf("%d branches meet at %s: remove or move all but two of them first", len(meet), id)
	}
	n := without(h, gone{thing{noun, id}: true})
	return n, Lost(h, n, id), nil
}

func branchesOf(h *model.Harness, at []int) string {
	var all []string
	for _, k := range at {
		all = append(all, h.Branches[k].ID)
	}
	return few(all)
}

// beyond is the places on the far side of a branch, seen from one of its ends.
func beyond(x *model.Index, branch int, from string) map[string]bool {
	return side(x, branch, x.Other(branch, from))
}

// side is the places that hang together with one, whatever is on the other side of a branch.
func side(x *model.Index, branch int, place string) map[string]bool {
	seen := map[string]bool{place: true}
	open := []string{place}
	for len(open) > 0 {
		p := open[len(open)-1]
		open = open[:len(open)-1]
		for _, k := range x.Meeting(p) {
			if o := x.Other(k, p); k != branch && !seen[o] {
				seen[o] = true
				open = append(open, o)
			}
		}
	}
	return seen
}

// RemoveReel forgets a reel that was measured on this job.
func RemoveReel(h *model.Harness, i int) *model.Harness {
	n := *h
	n.Reels = less(h.Reels, func(k int) bool { return k == i })
	return &n
}

// RemovePart forgets what was read off a part in hand.
func RemovePart(h *model.Harness, id string) *model.Harness {
	n := *h
	n.Parts = less(h.Parts, func(k int) bool { return h.Parts[k].ID == id })
	return &n
}

// less is a list without some of its elements; the list itself where all of them stay.
func less[T any](all []T, goes func(k int) bool) []T {
	var out []T
	for k := range all {
		if !goes(k) {
			out = append(out, all[k])
		}
	}
	if len(out) == len(all) {
		return all
	}
	return out
}

// gone is the things that leave a harness.
type gone map[thing]bool

// names reports whether a text names something that leaves.
func (g gone) names(n names, text string) bool {
	return slices.ContainsFunc(n.named(text), func(t thing) bool { return g[t] })
}

// follow adds what cannot stay without what leaves: splices without a place, wires without an
// end, units without a wire.
func (g gone) follow(h *model.Harness) {
	for k := range h.Splices {
		if g.names(aPlace, h.Splices[k].At) {
			g[thing{Splice, h.Splices[k].ID}] = true
		}
	}
	for k := range h.Wires {
		w := &h.Wires[k]
		from, to := g.names(anEnd, w.From.V), g.names(anEnd, w.To.V)
		if (from || w.From.V == "") && (to || w.To.V == "") && (from || to) {
			g[thing{Wire, w.ID}] = true
		}
	}
	for k := range h.Units {
		u := &h.Units[k]
		if len(u.Wires) > 0 && !slices.ContainsFunc(u.Wires, func(id string) bool { return !g.names(aWire, id) }) {
			g[thing{Unit, u.ID}] = true
		}
	}
}

// without is a harness without what leaves it, and without every mention of it.
func without(h *model.Harness, g gone) *model.Harness {
	g.follow(h)
	n := *h
	for _, m := range mentions {
		if m.outlives || m.layer {
			continue
		}
		m.each(&n, func(owner, text string) (string, bool) {
			if g[thing{Noun(m.noun), owner}] {
				return text, true
			}
			return text, !g.names(m.names, text)
		})
	}
	n.Branches = changed(n.Branches, func(b *model.Branch) bool { return !g[thing{Branch, b.ID}] && g.leave(b, h) })
	n.Terminations = less(n.Terminations, func(k int) bool { return g[thing{Termination, n.Terminations[k].ID}] })
	n.Breakouts = less(n.Breakouts, func(k int) bool { return g[thing{Breakout, n.Breakouts[k].ID}] })
	n.Splices = less(n.Splices, func(k int) bool { return g[thing{Splice, n.Splices[k].ID}] })
	n.Wires = less(n.Wires, func(k int) bool { return g[thing{Wire, n.Wires[k].ID}] })
	n.Feeds = less(n.Feeds, func(k int) bool { return g[thing{Feed, n.Feeds[k].ID}] })
	n.Units = less(n.Units, func(k int) bool { return g[thing{Unit, n.Units[k].ID}] })
	n.Branches = less(n.Branches, func(k int) bool { return g[thing{Branch, n.Branches[k].ID}] })
	return &n
}

// leave takes what leaves out of the layers of a branch. The wires of a unit that was taken
// apart lie where it lay; so do, of a unit that only lost wires, no other.
func (g gone) leave(b *model.Branch, h *model.Harness) bool {
	var out []string
	for _, l := range b.Layers {
		for _, id := range slices.Concat(l.Of, l.Pinned) {
			if g.names(aPiece, id) && !slices.Contains(out, id) {
				out = append(out, id)
			}
		}
	}
	if len(out) == 0 {
		return false
	}
	b.Layers = model.CloneLayers(b.Layers)
	for _, id := range out {
		for k := range h.Units {
			if h.Units[k].ID == id {
				g.apart(b, &h.Units[k])
			}
		}
		b.Take(id)
	}
	return true
}

// apart lays the wires of a unit that are kept into the layer that has the unit.
func (g gone) apart(b *model.Branch, u *model.Unit) {
	for k := range b.Layers {
		if !slices.Contains(b.Layers[k].Of, u.ID) {
			continue
		}
		for _, w := range u.Wires {
			if !g.names(aWire, w) {
				b.AddTo(k, w)
			}
		}
		return
	}
}
