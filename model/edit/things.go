package edit

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
)

// Reference is one place of a harness where a thing is named.
type Reference struct {
	Noun  string // the table that names it
	Owner string // the id there
	Key   string
}

// References is everywhere that a harness names a thing, table by table; the record of what
// was built is not looked at.
func References(h *model.Harness, noun Noun, id string) []Reference {
	var out []Reference
	n := *h
	for _, m := range mentions {
		m.each(&n, func(owner, text string) (string, bool) {
			if slices.Contains(m.names.named(text), thing{noun, id}) {
				out = append(out, Reference{m.noun, owner, m.key})
			}
			return text, true
		})
	}
	return out
}

// IDs is the ids of a table, in the order of the file.
func IDs(h *model.Harness, noun Noun) []string {
	switch noun {
	case Termination:
		return each(h.Terminations, func(t *model.Termination) string { return t.ID })
	case Breakout:
		return each(h.Breakouts, func(b *model.Breakout) string { return b.ID })
	case Splice:
		return each(h.Splices, func(s *model.Splice) string { return s.ID })
	case Wire:
		return each(h.Wires, func(w *model.Wire) string { return w.ID })
	case Feed:
		return each(h.Feeds, func(f *model.Feed) string { return f.ID })
	case Unit:
		return each(h.Units, func(u *model.Unit) string { return u.ID })
	case Branch:
		return each(h.Branches, func(b *model.Branch) string { return b.ID })
	}
	return nil
}

func each[T any](all []T, text func(*T) string) []string {
	out := make([]string, len(all))
	for i := range all {
		out[i] = text(&all[i])
	}
	return out
}

// at is where a thing is in its table, or why there is none.
func at(h *model.Harness, noun Noun, id string) (int, error) {
	all := IDs(h, noun)
	if i := slices.Index(all, id); i >= 0 {
		return i, nil
	}
	if len(all) == 0 {
		return 0, fmt.Errorf("no %s has the id %q: this harness has none", noun, id)
	}
	return 0, fmt.Errorf("no %s has the id %q. There are %s", noun, id, few(all))
}

// place says of what kind a place is, or why there is none.
func place(h *model.Harness, id string) (Noun, error) {
	if slices.Contains(IDs(h, Termination), id) {
		return Termination, nil
	}
	if slices.Contains(IDs(h, Breakout), id) {
		return Breakout, nil
	}
	return "", fmt.Errorf("no termination or breakout has the id %q. There are %s", id,
		few(slices.Concat(IDs(h, Termination), IDs(h, Breakout))))
}

// few is a list of ids as far as a person would read it.
func few(all []string) string {
	const most = 8
	if len(all) > most {
		return fmt.Sprintf("%s and %d more", strings.Join(all[:most], ", "), len(all)-most)
	}
	return strings.Join(all, ", ")
}
