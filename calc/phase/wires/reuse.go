package wires

import (
	"reflect"
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
)

// What the sizes and the ways of wires are worked out of: as long as these are the same, a
// wire of the prior sheet is taken over (SizeWires, FindPaths).

// SamePlaces reports whether two harnesses are alike around their wires: the shop's rules,
// reels, units, and the tree that the wires run through.
func SamePlaces(a, b *model.Harness) bool {
	return reflect.DeepEqual(a.Rules, b.Rules) && sheet.Shares(a.Reels, b.Reels) && sheet.Shares(a.Units, b.Units) &&
		sheet.Shares(a.Terminations, b.Terminations) && sheet.Shares(a.Breakouts, b.Breakouts) && sheet.Shares(a.Splices, b.Splices) &&
		slices.EqualFunc(a.Branches, b.Branches, func(x, y model.Branch) bool { return x.ID == y.ID && x.From == y.From && x.To == y.To })
}

// SameWire reports whether a wire is of the same size and runs the same way.
func SameWire(a, b *model.Wire) bool {
	return a.From == b.From && a.To == b.To && a.CappedAt == b.CappedAt && a.Spec == b.Spec && a.Size == b.Size
}
