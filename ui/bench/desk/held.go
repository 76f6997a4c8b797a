package desk

import (
	"fmt"
	"slices"

	"contralay/calc/sheet"
	"contralay/model"
)

// breaks says what a change would not leave as the builder holds it: a locked
// layer changed or its hand turned, something pinned moved; "" where nothing. What
// only lets go of a hold breaks none, nor does a branch that goes as a whole.
func breaks(s *sheet.Sheet, h *model.Harness) string {
	at := make(map[string]int, len(h.Branches))
	for i := range h.Branches {
		at[h.Branches[i].ID] = i
	}
	for i := range s.H.Branches {
		k, stays := at[s.H.Branches[i].ID]
		if !stays {
			continue
		}
		was, will := &s.H.Branches[i], &h.Branches[k]
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

// Renamed is Change where a thing only has another id: nothing that the builder holds is
// otherwise, though its layers name it otherwise.
func Renamed(m *Model, h *model.Harness, says string) {
	if h.Same(m.H) {
		m.Tell("unchanged")
		return
	}
	m.replace(h, says)
}

// inHand is where the branch in hand is in another harness: by its id, since branches come and
// go before it, else the one in its place.
func inHand(was *model.Harness, at int, now *model.Harness) int {
	if at < len(was.Branches) {
		id := was.Branches[at].ID
		if k := slices.IndexFunc(now.Branches, func(b model.Branch) bool { return b.ID == id }); k >= 0 {
			return k
		}
	}
	if at >= len(now.Branches) {
		return 0
	}
	return at
}

// SameSet reports whether two lists hold the same ids, in any order.
func SameSet(a, b []string) bool {
	return slices.Equal(slices.Sorted(slices.Values(a)), slices.Sorted(slices.Values(b)))
}

// OuterHand is the hand of the outermost layer of a branch: its own, or the shop's.
func OuterHand(s *sheet.Sheet, b *model.Branch) model.Hand { return b.Outer.Or(s.Limits.Outer) }
