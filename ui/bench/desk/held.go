package desk

import (
	"fmt"
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
)

// breaks says what a change would not leave as the builder holds it: a locked
// layer changed or its hand turned, something pinned moved; "" where nothing. What
// only lets go of a hold breaks none.
func breaks(s *sheet.Sheet, h *model.Harness) string {
	for i := range min(len(s.H.Branches), len(h.Branches)) {
		was, will := &s.H.Branches[i], &h.Branches[i]
		turns := (len(was.Layers)-len(will.Layers))%2 != 0 != (OuterHand(s, was) != will.Outer.Or(h.Rules.Resolve().Outer))
		for k, l := range was.Layers {
			name := model.LayerName(k)
			if k >= len(will.Layers) {
				if l.Locked.V || len(l.Pinned) > 0 {
					return fmt.Sprintf("%s of %s is locked or pinned: this would remove it", name, was.ID)
				}
				continue
			}
			to := will.Layers[k]
			switch {
			case l.Locked.V && (l.Fillers.V != to.Fillers.V || l.FillerMM != to.FillerMM || l.BindMM != to.BindMM ||
				l.BindPart != to.BindPart || l.LayMM != to.LayMM ||
				!SameSet(l.Of, to.Of)):
				return fmt.Sprintf("%s of %s is locked: this would change it", name, was.ID)
			case l.Locked.V && turns && (k > 0 || len(l.Of) > 1):
				return fmt.Sprintf("%s of %s is locked: this would turn its hand", name, was.ID)
			}
			for _, id := range l.Pinned {
				if !slices.Contains(to.Of, id) {
					return fmt.Sprintf("%s is pinned to %s: this would move it", id, name)
				}
			}
		}
	}
	return ""
}

// SameSet reports whether two lists hold the same ids, in any order.
func SameSet(a, b []string) bool {
	return slices.Equal(slices.Sorted(slices.Values(a)), slices.Sorted(slices.Values(b)))
}

// OuterHand is the hand of the outermost layer of a branch: its own, or the shop's.
func OuterHand(s *sheet.Sheet, b *model.Branch) model.Hand { return b.Outer.Or(s.Limits.Outer) }
