package calc

import (
	"reflect"

	"contralay/calc/phase/bundle"
	"contralay/calc/phase/ends"
	"contralay/calc/phase/length"
	"contralay/calc/phase/over"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model"
)

// What a prior sheet still knows. An edit shares with the harness before it whatever it
// did not change, so most of what two sheets have in common is told by comparing where
// lists lie in memory; wires and branches are compared one by one. What is the same is
// taken over with what was said about it, and a key costs what it changed. What to compare
// is the matter of each phase whose result is taken over: see its reuse.go.

// compareWires finds what a harness shares with that of the prior sheet; the ways of its
// wires and their heat are not looked at.
func compareWires(s *sheet.Sheet, prior *sheet.Sheet) {
	if prior == nil {
		return
	}
	a, b := prior.H, s.H
	r := &s.Reuse
	r.Prior = prior
	r.Places = prior.Cat == s.Cat && wires.SamePlaces(a, b) && ends.SamePlaces(a, b) && bundle.SamePlaces(a, b) &&
		length.SamePlaces(a, b) && over.SamePlaces(a, b)
	if !r.Places || len(a.Wires) != len(b.Wires) {
		return
	}
	r.Ids, r.All = true, true
	r.Wires = make([]bool, len(b.Wires))
	for k := range b.Wires {
		x, y := &a.Wires[k], &b.Wires[k]
		r.Ids = r.Ids && x.ID == y.ID
		r.Wires[k] = x.ID == y.ID && wires.SameWire(x, y) && ends.SameWire(x, y) && bundle.SameWire(x, y) && length.SameWire(x, y) &&
			over.SameWire(x, y)
		r.All = r.All && r.Wires[k]
	}
	if !r.Ids {
		return
	}
	r.Planned = reflect.ValueOf(prior.LaidBy).Pointer() == reflect.ValueOf(s.Proposals).Pointer()
}

// compareBranches does it for branches, once the wires have their ways.
func compareBranches(s *sheet.Sheet) {
	r := &s.Reuse
	if !r.Ids {
		return
	}
	r.Branches = make([]bool, len(s.H.Branches))
	for i := range r.Branches {
		x, y := &r.Prior.H.Branches[i], &s.H.Branches[i]
		r.Branches[i] = x.ID == y.ID && bundle.SameBranch(x, y) && length.SameBranch(x, y) && over.SameBranch(x, y) &&
			bundle.StaysLaid(s, i)
	}
	for k, same := range r.Wires {
		if same {
			continue
		}
		for _, i := range bundle.HasASayIn(s, k) {
			r.Branches[i] = false
		}
	}
}

// index is that of the harness: the prior's under this harness where every id and the
// tree are the same.
func index(s *sheet.Sheet) *model.Index {
	if s.Reuse.Ids && sheet.Shares(s.Reuse.Prior.H.Feeds, s.H.Feeds) {
		x := *s.Reuse.Prior.Index
		x.H = s.H
		return &x
	}
	return model.NewIndex(s.H)
}
