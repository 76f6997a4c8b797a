package compare

import (
	"slices"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/compare/side"
	"contralay/model/wirelist/value"
)

// field is something a wire may have, as text that compares.
type field struct {
	name string
	of   func(*List, *model.Wire) string
}

// has reports whether a wire of a list has a value of a field.
func has(l *List, f field) bool {
	return slices.ContainsFunc(l.Harness.Wires, func(w model.Wire) bool { return f.of(l, &w) != "" })
}

// fieldsOf is what both lists give of any wire.
func fieldsOf(a, b *List) []field {
	all := wireFields(a.Whole && b.Whole)
	if !a.Whole || !b.Whole {
		// An import knows roles by the signals, but for that of a spare.
		all[len(all)-1].of = func(_ *List, w *model.Wire) string {
			if w.Role.V == model.RoleSpare {
				return "spare"
			}
			return ""
		}
	}
	return slices.DeleteFunc(all, func(f field) bool {
		return !a.Gives(f.name, has(a, f)) || !b.Gives(f.name, has(b, f)) || f.name == "specification" && (a.Guesses() || b.Guesses()) &&
			assumed(&a.Harness) != assumed(&b.Harness)
	})
}

// wireFields is what a wire may have, its role last. Of two files the note is compared as it
// is; else a value that was not understood is looked for there.
func wireFields(files bool) []field {
	orNoted := func(l *List, w *model.Wire, stated, what string) string {
		if files {
			return stated
		}
		return l.OrNoted(w, stated, what)
	}
	return []field{
		{"signal", func(_ *List, w *model.Wire) string { return w.Signal.V }},
		{"size", func(l *List, w *model.Wire) string { return orNoted(l, w, catalogue.CanonicalSize(w.Size), "size") }},
		{"specification", func(_ *List, w *model.Wire) string { return w.Spec }},
		{"colour", func(l *List, w *model.Wire) string {
			if files {
				return side.ColourWords(w.Colour.V)
			}
			return l.Colour(w)
		}},
		{"current", func(l *List, w *model.Wire) string {
			if !w.Amps.Set {
				return orNoted(l, w, "", "current")
			}
			return value.FormatCurrent(w.Amps.V)
		}},
		{"role", func(_ *List, w *model.Wire) string { return string(w.Role.V) }},
	}
}

// assumed reports whether every wire has the specification that an import gives to those without, so
// that the list may not state any.
func assumed(h *model.Harness) bool {
	usual := model.Rules{}.Resolve().Spec
	return !slices.ContainsFunc(h.Wires, func(w model.Wire) bool { return w.Spec != usual && w.Spec != "ISO 6722 thin" })
}

// change is one field of one pair that is not the same.
type change struct{ what, was, is string }

func (c *comparer) changes(p pair) []change {
	var all []change
	for _, f := range c.fields {
		was, is := f.of(&c.first, p.was.wire), f.of(&c.second, p.is.wire)
		if f.name == "specification" {
			unsaid, now := c.first.Taken[p.was.wire.ID], c.second.Taken[p.is.wire.ID]
			if unsaid || now { // one of the two was only taken for it
				c.unsaidSpec[0], c.unsaidSpec[1] = c.unsaidSpec[0] || unsaid && !now, c.unsaidSpec[1] || now && !unsaid
				continue
			}
		}
		if was != is && !c.same(f.name, was, is) {
			all = append(all, change{f.name, was, is})
		}
	}
	if was, is := c.first.OwnID(p.was.wire), c.second.OwnID(p.is.wire); c.sameIDs && was != is {
		all = append(all, change{"id", was, is})
	}
	if was, is := c.notesOf(p); was != is {
		all = append(all, change{"note", was, is})
	}
	return all
}

// same reports whether two values that are not spelled alike are one. Between two files a spelling
// counts.
func (c *comparer) same(field, was, is string) bool {
	switch field {
	case "signal":
		return !c.files() && side.Plain(was) == side.Plain(is)
	case "size":
		return catalogue.SameSize(was, is) // its unit is said once, for all wires
	}
	return false
}
