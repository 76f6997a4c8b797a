package edit

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/visible"
)

// Rename gives a thing another id, everywhere that the harness names it: mentions.go lists
// where. What is said beside it names what keeps the old id.
//
// A record of what was built keeps it. Somebody ticked and signed for "cut 101" on a harness
// whose sleeve reads 101; a record that changed with the drawing would no longer say what was
// done. The run then asks for the renamed thing, and what is said names the builds.
//
// An independent list follows its harness, so that the two still compare; where the list has
// the new id already, its old one is another thing, and stays.
func Rename(h *model.Harness, noun Noun, id, to string) (out *model.Harness, says []string, err error) {
	i, err := at(h, noun, id)
	if err != nil {
		return h, nil, err
	}
	if id == to {
		return h, nil, nil
	}
	if err := mayBeCalled(h, noun, to); err != nil {
		return h, nil, err
	}
	listed := noun == Termination && slices.Contains(listedTerminations(h), to)
	n := *h
	for _, m := range mentions {
		if m.path == "Listed.Ends" && listed {
			continue
		}
		m.each(&n, func(_, text string) (string, bool) {
			if slices.Contains(m.names.named(text), thing{noun, id}) {
				return m.names.with(text, to), true
			}
			return text, true
		})
	}
	switch noun {
	case Termination:
		n.Terminations = slices.Clone(n.Terminations)
		n.Terminations[i].ID = to
	case Breakout:
		n.Breakouts = slices.Clone(n.Breakouts)
		n.Breakouts[i].ID = to
	case Splice:
		n.Splices = slices.Clone(n.Splices)
		n.Splices[i].ID = to
	case Wire:
		n.Wires = slices.Clone(n.Wires)
		n.Wires[i].ID = to
	case Feed:
		n.Feeds = slices.Clone(n.Feeds)
		n.Feeds[i].ID = to
	case Unit:
		n.Units = slices.Clone(n.Units)
		n.Units[i].ID = to
	case Branch:
		n.Branches = slices.Clone(n.Branches)
		n.Branches[i].ID = to
	}
	if listed && slices.Contains(listedTerminations(h), id) {
		says = append(says, fmt.Sprintf("the independent list has both %s and %s: nothing of it was renamed", id, to))
	}
	return &n, append(says, recordsOf(h, id, to)...), nil
}

// mayBeCalled says why a thing cannot have an id, if it cannot.
func mayBeCalled(h *model.Harness, noun Noun, id string) error {
	if id == "" {
		return fmt.Errorf("an id cannot be empty: type any text that no other %s has", noun)
	}
	if says, allowed := visible.Fault(id, true); says != "" {
		return fmt.Errorf("the id %s. Allowed: %s", says, allowed)
	}
	alike := []Noun{noun}
	switch noun {
	case Termination, Breakout:
		alike = []Noun{Termination, Breakout}
	case Wire, Unit:
		alike = []Noun{Wire, Unit}
	}
	for _, other := range alike {
		if slices.Contains(IDs(h, other), id) {
			return fmt.Errorf("%s is a %s already: take another id for this %s", id, other, noun)
		}
	}
	switch {
	case (noun == Termination || noun == Splice) && strings.Contains(id, ":"):
		return fmt.Errorf("%s has a colon: a %s has none, because wires write TERMINATION:CAVITY", id, noun)
	case noun == Splice && (id == "shell" || id == "cut"):
		return fmt.Errorf("%s says how a drain ends: take another id for this splice", id)
	case noun == Wire || noun == Unit:
		return asideHas(h, id)
	}
	return nil
}

// asideHas says where a lay-up set aside names a piece that the harness no longer has: another
// one that took its id would be taken for it.
func asideHas(h *model.Harness, id string) error {
	for i := range h.Branches {
		for _, a := range h.Branches[i].Asides {
			for _, l := range a.Layers {
				if slices.Contains(l.Of, id) || slices.Contains(l.Pinned, id) {
					return fmt.Errorf("the lay-up %q set aside on %s still has a %s, which is gone: take another id, or remove that lay-up",
						a.Name, h.Branches[i].ID, id)
				}
			}
		}
	}
	return nil
}

// listedTerminations is the terminations that the independent list has.
func listedTerminations(h *model.Harness) []string {
	var out []string
	for _, l := range h.Listed {
		for _, text := range l.Ends {
			if end, ok := model.ParseEnd(text); ok && end.Splice == "" {
				out = append(out, end.Termination)
			}
		}
	}
	return out
}

// recordsOf says which builds have a record of the old id, and which of the new one.
func recordsOf(h *model.Harness, id, to string) []string {
	var old, taken []string
	for i := range h.Builds {
		b := &h.Builds[i]
		if recorded(b, id) {
			old = append(old, b.Serial)
		}
		if recorded(b, to) {
			taken = append(taken, b.Serial)
		}
	}
	var out []string
	if len(old) > 0 {
		out = append(out, fmt.Sprintf("the record of build %s keeps %s, and its run asks for %s", few(old), id, to))
	}
	if len(taken) > 0 {
		out = append(out, fmt.Sprintf("build %s already has a record of a %s: compare it with this one", few(taken), to))
	}
	return out
}

// recorded reports whether the record of a build names an id.
func recorded(b *model.Build, id string) bool {
	has := func(text string) bool { return hasWord(text, id) }
	any := func(all []string) bool { return slices.ContainsFunc(all, has) }
	made := func(w model.What) bool { return any(w.Members) || any(w.Ends) || any(w.Path) || has(w.Place.V) }
	return any(b.Done) ||
		slices.ContainsFunc(b.Steps, func(t model.Ticked) bool { return has(t.Key) || made(t.What.V) || made(t.Sheet.V) }) ||
		slices.ContainsFunc(b.Signed, func(s model.Signature) bool { return has(s.Step) }) ||
		slices.ContainsFunc(b.Readings, func(r model.Reading) bool { return r.Branch == id }) ||
		slices.ContainsFunc(b.Tubes, func(r model.Recovered) bool { return r.Branch == id }) ||
		slices.ContainsFunc(b.Again, func(a model.Again) bool { return has(a.End) }) ||
		slices.ContainsFunc(b.Apart, func(d model.Deviation) bool { return has(d.At) || has(d.Step.V) || any(d.Steps) }) ||
		slices.ContainsFunc(b.Tests, func(t model.Test) bool { return t.Feed.V == id })
}

// hasWord reports whether a text of a record names an id, by itself or between blanks, colons
// and plus signs: "lay T1 0", "P1:A", "A 101+102".
func hasWord(text, id string) bool {
	const between = " :+"
	for from := 0; ; {
		k := strings.Index(text[from:], id)
		if k < 0 || id == "" {
			return false
		}
		start, end := from+k, from+k+len(id)
		if (start == 0 || strings.IndexByte(between, text[start-1]) >= 0) &&
			(end == len(text) || strings.IndexByte(between, text[end]) >= 0) {
			return true
		}
		from = start + 1
	}
}

// RenameCavity gives a cavity of a termination that lists its own another name, with every end
// of a wire and of a drain that is in it. Another name that it had as an alias is its own then.
func RenameCavity(h *model.Harness, termination, cavity, to string) (*model.Harness, error) {
	i, err := at(h, Termination, termination)
	if err != nil {
		return h, err
	}
	t := h.Terminations[i]
	k := slices.Index(t.Cavities, cavity)
	switch {
	case len(t.Cavities) == 0:
		return h, fmt.Errorf("%s lists no cavities of its own: those of an insert are named by the catalogue. Give it an alias",
			termination)
	case k < 0:
		return h, fmt.Errorf("%s has no cavity %q. It lists %s", termination, cavity, few(t.Cavities))
	case cavity == to:
		return h, nil
	case to == "":
		return h, fmt.Errorf("a cavity cannot be without a name: type any text that no other cavity of %s has", termination)
	case slices.Contains(t.Cavities, to):
		return h, fmt.Errorf("%s has a cavity %s already: take another name", termination, to)
	}
	if says, allowed := visible.Fault(to, true); says != "" {
		return h, fmt.Errorf("the name of the cavity %s. Allowed: %s", says, allowed)
	}
	for own, also := range t.Aliases {
		if own != cavity && (own == to || slices.Contains(also, to)) {
			return h, fmt.Errorf("cavity %s of %s is called %s too: take another name", own, termination, to)
		}
	}
	for size, all := range t.Contacts {
		if slices.Contains(all, to) {
			return h, fmt.Errorf("%s has a contact of size %s in a cavity %s, which it does not list: take another name", termination, size,
				to)
		}
	}
	renamed := func(all []string) []string {
		out := slices.Clone(all)
		for k := range out {
			if out[k] == cavity {
				out[k] = to
			}
		}
		return out
	}
	t.Cavities, t.Reserved = renamed(t.Cavities), renamed(t.Reserved)
	if t.Contacts != nil {
		t.Contacts = maps.Clone(t.Contacts)
		for size, all := range t.Contacts {
			t.Contacts[size] = renamed(all)
		}
	}
	if also, is := t.Aliases[cavity]; is {
		t.Aliases = maps.Clone(t.Aliases)
		delete(t.Aliases, cavity)
		t.Aliases[to] = slices.DeleteFunc(slices.Clone(also), func(a string) bool { return a == to })
	}
	n := *h
	n.Terminations = slices.Clone(h.Terminations)
	n.Terminations[i] = t
	end := termination + ":" + cavity
	listed := slices.ContainsFunc(h.Listed, func(l model.Listed) bool { return slices.Contains(l.Ends, termination+":"+to) })
	for _, m := range mentions {
		if m.names != anEnd && m.names != aDrain || m.path == "Listed.Ends" && listed {
			continue
		}
		m.each(&n, func(_, text string) (string, bool) {
			if text == end {
				return termination + ":" + to, true
			}
			return text, true
		})
	}
	return &n, nil
}
