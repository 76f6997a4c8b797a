package side

import (
	"slices"

	"contralay/model"
)

// Far ends that a list names without a cavity, "relay", are places like a splice. An import makes of one
// a termination of one cavity where it is named once, and keeps it in the note where it is named
// twice; here both are the one place.

// nameBare gives the ends without a cavity their common names: that of the termination that either
// list has of the name, else as the first list writes it.
func nameBare(was, is *Side) {
	byName := map[string]string{} // plain → common name
	for _, s := range []*Side{was, is} {
		for i := range s.Harness.Terminations {
			t := &s.Harness.Terminations[i]
			for _, n := range namesOf(t) {
				if n != "" && byName[n] == "" {
					byName[n] = s.NameOf[t.ID]
				}
			}
		}
	}
	bare := map[string]bool{}
	for _, s := range []*Side{was, is} {
		for id := range s.madeUp {
			bare[s.NameOf[id]] = true
		}
	}
	for _, s := range []*Side{was, is} {
		if s.List.Whole && was.List.Whole && is.List.Whole {
			continue // notes of a harness are words of a person
		}
		for i := range s.Harness.Wires {
			for _, at := range s.List.EndsAt(&s.Harness.Wires[i]) {
				key := Plain(at)
				if byName[key] == "" {
					byName[key] = at
				}
				s.bareName[at] = byName[key]
				bare[byName[key]] = true
			}
		}
	}
	was.Bare, is.Bare = bare, bare
}

// findMadeUp finds the terminations that an import made of ends without a cavity.
func (s *Side) findMadeUp() {
	s.madeUp = map[string]bool{}
	named := map[string]bool{}
	for _, at := range s.List.BareEnds() {
		named[Plain(at)] = true
	}
	for i := range s.Harness.Terminations {
		t := &s.Harness.Terminations[i]
		if len(named) > 0 && len(t.Cavities) < 2 && slices.ContainsFunc(namesOf(t), func(n string) bool { return named[n] }) {
			s.madeUp[t.ID] = true
		}
	}
}

// Ends is where a wire ends, by common names; an end that it lacks is filled by one without a
// cavity.
func (s *Side) Ends(w *model.Wire) (from, to string) {
	from, to = s.End(w.From.V), s.End(w.To.V)
	if from != "" && to != "" || len(s.bareName) == 0 {
		return from, to
	}
	for _, at := range s.List.EndsAt(w) {
		switch {
		case from == "":
			from = s.bareName[at]
		case to == "":
			to = s.bareName[at]
		}
	}
	return from, to
}

// cavities is how many cavities a termination has, as far as the list says.
func (s *Side) cavities(id string) int {
	i, ok := s.Index.Termination[id]
	if !ok {
		return 0
	}
	if t := &s.Harness.Terminations[i]; t.Insert.V == "" {
		return max(len(t.Cavities), len(s.Wired()[id]))
	}
	return 2 // of an insert: more than one
}

// Wired is the cavities of each termination that wires are in, by its id.
func (s *Side) Wired() map[string]map[string]bool {
	if s.wiredAt != nil {
		return s.wiredAt
	}
	s.wiredAt = map[string]map[string]bool{}
	for i := range s.Harness.Wires {
		for _, text := range []string{s.Harness.Wires[i].From.V, s.Harness.Wires[i].To.V} {
			e, ok := s.Index.End(text)
			if !ok || e.Splice != "" {
				continue
			}
			if s.wiredAt[e.Termination] == nil {
				s.wiredAt[e.Termination] = map[string]bool{}
			}
			s.wiredAt[e.Termination][e.Cavity] = true
		}
	}
	return s.wiredAt
}
