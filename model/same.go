package model

import (
	"reflect"
	"slices"
)

// Same reports whether two harnesses hold the same. What they share, after an edit most
// of it, is not looked at again.
func (h *Harness) Same(o *Harness) bool {
	if h == o {
		return true
	}
	// a wire is values alone
	return reflect.DeepEqual(h.Head, o.Head) && reflect.DeepEqual(h.Rules, o.Rules) && h.Board == o.Board &&
		(h.Wires == nil) == (o.Wires == nil) &&
		slices.Equal(h.Wires, o.Wires) &&
		reflect.DeepEqual(h.Reels, o.Reels) && reflect.DeepEqual(h.Parts, o.Parts) && reflect.DeepEqual(h.Terminations, o.Terminations) &&
		reflect.DeepEqual(h.Breakouts, o.Breakouts) && reflect.DeepEqual(h.Splices, o.Splices) &&
		reflect.DeepEqual(h.Feeds, o.Feeds) && reflect.DeepEqual(h.Units, o.Units) && reflect.DeepEqual(h.Branches, o.Branches) &&
		reflect.DeepEqual(h.Builds, o.Builds) && reflect.DeepEqual(h.Listed, o.Listed)
}

// SameBuilds reports whether two harnesses hold the same of what is built from them.
func SameBuilds(a, b *Harness) bool { return reflect.DeepEqual(a.Builds, b.Builds) }

// SameDesign reports whether two harnesses hold the same but for what is built from them.
func SameDesign(a, b *Harness) bool {
	x, y := *a, *b
	x.Builds, y.Builds = nil, nil
	return x.Same(&y)
}

// Alike reports whether two things of a harness hold the same.
func Alike[T any](a, b *T) bool {
	if w, is := any(a).(*Wire); is { // values alone
		return *w == *any(b).(*Wire)
	}
	return reflect.DeepEqual(a, b)
}
