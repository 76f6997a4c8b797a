package compare

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model"
)

// side is one of the two harnesses, its cavities and splices under common names.
type side struct {
	harness    *model.Harness
	index      *model.Index
	nameOf     map[string]string // id of a termination → common name
	spliceName map[string]string // id of a splice → common name
	renamed    map[string]bool   // terminations that have no name of the other's, by id
}

// both reads two harnesses. The common names are those of a. A termination is the same in
// both by its names alone: what a list calls otherwise may be another connector.
func both(a, b *model.Harness) (was, is *side) { return sides(a, b, false) }

// bothByContent takes a termination that has other names in b for the same too where most
// of its cavities hold the same: of two revisions it was called anew.
func bothByContent(a, b *model.Harness) (was, is *side) { return sides(a, b, true) }

func sides(a, b *model.Harness, content bool) (was, is *side) {
	was = &side{harness: a, index: model.NewIndex(a), nameOf: map[string]string{}, spliceName: map[string]string{}}
	is = &side{harness: b, index: model.NewIndex(b), nameOf: map[string]string{}, spliceName: map[string]string{}}
	for _, t := range a.Terminations {
		was.nameOf[t.ID] = t.ID
	}
	taken := is.nameTerminations(a)
	if content {
		is.findRenamed(was, taken)
	}
	for _, t := range b.Terminations {
		if is.nameOf[t.ID] == "" {
			is.nameOf[t.ID] = t.ID
			if taken[t.ID] { // another termination of this id took the name
				is.nameOf[t.ID] = t.ID + "'"
			}
		}
	}
	for _, s := range a.Splices {
		was.spliceName[s.ID] = s.ID
	}
	is.nameSplices(was)
	return was, is
}

// plain is a name without case, signs and blanks.
func plain(s string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return unicode.ToLower(r)
		}
		return -1
	}, s)
}

// namesOf are the names of a termination, the surest first: its id, its name, its name
// up to a comma.
func namesOf(t *model.Termination) []string {
	short, _, _ := strings.Cut(t.Name.V, ",")
	return []string{plain(t.ID), plain(t.Name.V), plain(short)}
}

// nameTerminations finds for each termination the one of a that is the same: first
// those with one id, then one name against any name, each of a once. It says which of a are
// taken.
func (s *side) nameTerminations(a *model.Harness) map[string]bool {
	taken := map[string]bool{}
	pass := func(same func(mine, other []string) bool) {
		for i := range s.harness.Terminations {
			t := &s.harness.Terminations[i]
			if s.nameOf[t.ID] != "" {
				continue
			}
			for k := range a.Terminations {
				o := &a.Terminations[k]
				if !taken[o.ID] && same(namesOf(t), namesOf(o)) {
					s.nameOf[t.ID], taken[o.ID] = o.ID, true
					break
				}
			}
		}
	}
	pass(func(m, o []string) bool { return m[0] == o[0] && m[0] != "" })
	pass(func(m, o []string) bool { return m[1] == o[1] && m[1] != "" })
	pass(func(m, o []string) bool {
		return slices.ContainsFunc(m, func(n string) bool { return n != "" && slices.Contains(o, n) })
	})
	return taken
}

// nameSplices finds for each splice the one of was that joins most of the same
// cavities, those that share most first.
func (s *side) nameSplices(was *side) {
	joins := func(w *side) map[string]map[string]bool {
		out := map[string]map[string]bool{}
		for i := range w.harness.Wires {
			from, ok1 := w.index.End(w.harness.Wires[i].From.V)
			to, ok2 := w.index.End(w.harness.Wires[i].To.V)
			for _, e := range [][2]model.End{{from, to}, {to, from}} {
				if !ok1 || !ok2 || e[0].Splice == "" || e[1].Splice != "" {
					continue
				}
				if out[e[0].Splice] == nil {
					out[e[0].Splice] = map[string]bool{}
				}
				out[e[0].Splice][w.cavity(e[1])] = true
			}
		}
		return out
	}
	mine, theirs := joins(s), joins(was)
	at := map[string][]string{} // cavity → splices of was
	for _, o := range was.harness.Splices {
		for c := range theirs[o.ID] {
			at[c] = append(at[c], o.ID)
		}
	}
	type match struct {
		mine, other string
		n           int
	}
	var all []match
	for _, m := range s.harness.Splices {
		n := map[string]int{}
		for c := range mine[m.ID] {
			for _, o := range at[c] {
				n[o]++
			}
		}
		for _, o := range was.harness.Splices {
			if n[o.ID] > 0 {
				all = append(all, match{m.ID, o.ID, n[o.ID]})
			}
		}
	}
	slices.SortStableFunc(all, func(p, q match) int { return q.n - p.n })
	taken := map[string]bool{}
	for _, m := range all {
		if s.spliceName[m.mine] == "" && !taken[m.other] {
			s.spliceName[m.mine], taken[m.other] = m.other, true
		}
	}
	for _, m := range s.harness.Splices {
		if s.spliceName[m.ID] == "" {
			s.spliceName[m.ID] = m.ID
			if was.spliceName[m.ID] != "" {
				s.spliceName[m.ID] = m.ID + "'"
			}
		}
	}
}

// cavity is an end at a termination by its common name.
func (s *side) cavity(e model.End) string {
	t := s.nameOf[e.Termination]
	if t == "" {
		t = e.Termination
	}
	return t + ":" + e.Cavity
}

// end is any end by its common name; "" where there is none.
func (s *side) end(text string) string {
	e, ok := s.index.End(text)
	switch {
	case !ok:
		return ""
	case e.Splice != "":
		if n := s.spliceName[e.Splice]; n != "" {
			return n
		}
		return e.Splice
	}
	return s.cavity(e)
}
