package compare

import (
	"slices"

	"contralay/model"
	"contralay/model/unit"
)

// List is a list, or a harness, with what it has a place for.
type List struct {
	Harness model.Harness
	States  map[string]bool            // as an import reports it; nil: what any wire of it has
	Taken   map[string]bool            // wires whose specification the list does not say, by id; nil: not known
	Lengths map[string]unit.Millimetre // of its wires, by their ids, as the list says them
	Whole   bool                       // it is the file of a harness, which states all there is
}

// has reports whether a wire of the list has a value of the field.
func (l *List) has(f field) bool {
	return slices.ContainsFunc(l.Harness.Wires, func(w model.Wire) bool { return f.of(&w) != "" })
}

// states reports whether the list has a place for a thing, or holds one.
func (l *List) states(what string, has bool) bool { return l.Whole || l.States[what] || has }

// guesses reports whether it is not known which of its specifications the list says.
func (l *List) guesses() bool { return !l.Whole && l.Taken == nil }

// hasIDs reports whether its ids are its own, and not the numbers that an import gives.
func (l *List) hasIDs() bool { return l.Whole || l.States == nil || l.States["id"] }

// Unstated is what one of two lists gives and the other has no place for, which is not
// compared: colours, lengths and the like, of a given first, then of b.
func Unstated(a, b List) (ofA, ofB []string) {
	only := func(l, o *List) (all []string) {
		add := func(what string, has, other bool) {
			if has && !o.states(what, other) {
				all = append(all, what)
			}
		}
		for _, f := range wireFields(false) {
			if f.name != "role" && f.name != "specification" {
				add(f.name, l.has(f), o.has(f))
			}
		}
		add("fuse", len(l.Harness.Feeds) > 0, len(o.Harness.Feeds) > 0)
		add("unit", len(l.Harness.Units) > 0, len(o.Harness.Units) > 0)
		if len(l.Lengths) > 0 && (o.Whole || !o.states("length", len(o.Lengths) > 0)) {
			all = append(all, "length")
		}
		return all
	}
	return only(&a, &b), only(&b, &a)
}
