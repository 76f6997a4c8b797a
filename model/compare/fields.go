package compare

import (
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/wirelist/value"
)

// field is something a wire may have, as text that compares.
type field struct {
	name string
	of   func(*model.Wire) string
}

// fieldsOf is what both lists give of any wire.
func fieldsOf(a, b *List) []field {
	all := wireFields(a.Whole && b.Whole)
	if !a.Whole || !b.Whole {
		// An import knows roles by the signals, but for that of a spare.
		all[len(all)-1].of = func(w *model.Wire) string {
			if w.Role.V == model.RoleSpare {
				return "spare"
			}
			return ""
		}
	}
	return slices.DeleteFunc(all, func(f field) bool {
		return !a.states(f.name, a.has(f)) || !b.states(f.name, b.has(f)) || f.name == "specification" && (a.guesses() || b.guesses()) &&
			assumed(&a.Harness) != assumed(&b.Harness)
	})
}

// wireFields is what a wire may have, its role last. Of two files the note is compared as it
// is; else a value that was not understood is looked for there.
func wireFields(files bool) []field {
	orNoted := func(w *model.Wire, stated, what string) string {
		if files {
			return stated
		}
		return orNoted(w, stated, what)
	}
	return []field{
		{"signal", func(w *model.Wire) string { return w.Signal.V }},
		{"size", func(w *model.Wire) string { return orNoted(w, catalogue.CanonicalSize(w.Size), "size") }},
		{"specification", func(w *model.Wire) string { return w.Spec }},
		{"colour", func(w *model.Wire) string { return orNoted(w, colourWords(w.Colour.V), "colour") }},
		{"current", func(w *model.Wire) string {
			if !w.Amps.Set {
				return orNoted(w, "", "current")
			}
			return value.FormatCurrent(w.Amps.V)
		}},
		{"role", func(w *model.Wire) string { return string(w.Role.V) }},
	}
}

// orNoted is a value, or where there is none the text of it that an import did not understand
// and left in the note: "mauve" of "colour: mauve; at the board".
func orNoted(w *model.Wire, stated, what string) string {
	if stated != "" || w.Note.V == "" {
		return stated
	}
	for piece := range strings.SplitSeq(w.Note.V, "; ") {
		if text, ok := strings.CutPrefix(piece, what+": "); ok {
			return text
		}
	}
	return ""
}

// assumed reports whether every wire has the specification that an import gives to those without, so
// that the list may not state any.
func assumed(h *model.Harness) bool {
	usual := model.Rules{}.Resolve().Spec
	return !slices.ContainsFunc(h.Wires, func(w model.Wire) bool { return w.Spec != usual && w.Spec != "ISO 6722 thin" })
}

// colourWords is a colour in words, so that "29", "RDWH" and "red/white" are one; what is
// none stays as it is.
func colourWords(code string) string {
	if c, ok := value.ParseColour(code, ""); ok {
		return c.String()
	}
	return code
}

// change is one field of one pair that is not the same.
type change struct{ what, was, is string }

func (c *comparer) changes(p pair) []change {
	var all []change
	for _, f := range c.fields {
		was, is := f.of(p.was.wire), f.of(p.is.wire)
		if f.name == "specification" && (c.first.Taken[p.was.wire.ID] || c.second.Taken[p.is.wire.ID]) {
			continue // one of the two was only taken for it
		}
		if was != is && (f.name != "signal" || plain(was) != plain(is)) {
			all = append(all, change{f.name, was, is})
		}
	}
	if c.sameIDs && p.was.wire.ID != p.is.wire.ID {
		all = append(all, change{"id", p.was.wire.ID, p.is.wire.ID})
	}
	return all
}
