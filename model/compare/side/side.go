package side

import (
	"slices"
	"strings"

	"contralay/model"
)

// Side is one of the two harnesses, its cavities and splices under common names.
type Side struct {
	Harness    *model.Harness
	List       *List
	Index      *model.Index
	NameOf     map[string]string // id of a termination → common name
	spliceName map[string]string // id of a splice → common name
	Renamed    map[string]string // terminations that have no name of the other's, by id → how they were found
	Bare       map[string]bool   // common names of far ends that one of the lists names without a cavity
	madeUp     map[string]bool   // terminations of ends without a cavity, by id
	wiredAt    map[string]map[string]bool
	bareName   map[string]string // such an end as this list writes it → common name
}

// Both reads two harnesses. The common names are those of a. A termination is the same in
// both by its names alone: what a list calls otherwise may be another connector.
func Both(a, b *model.Harness) (was, is *Side) {
	return sides(&List{Harness: *a, Whole: true}, &List{Harness: *b, Whole: true}, false)
}

// Revisions takes a termination that has other names in b for the same too, where what it holds
// says so: of two revisions it has a new name.
func Revisions(a, b *List) (was, is *Side) { return sides(a, b, true) }

func sides(first, second *List, revisions bool) (was, is *Side) {
	was, is = New(first), New(second)
	a, b := was.Harness, is.Harness
	for _, t := range a.Terminations {
		was.NameOf[t.ID] = t.ID
	}
	taken := is.nameTerminations(a)
	if revisions {
		is.findRenamed(was, taken)
	}
	for _, t := range b.Terminations {
		if is.NameOf[t.ID] == "" {
			is.NameOf[t.ID] = t.ID
			if taken[t.ID] { // another termination of this id took the name
				is.NameOf[t.ID] = t.ID + "'"
			}
		}
	}
	nameBare(was, is)
	for _, s := range a.Splices {
		was.spliceName[s.ID] = s.ID
	}
	is.nameSplices(was)
	return was, is
}

func New(l *List) *Side {
	s := &Side{Harness: &l.Harness, List: l, Index: model.NewIndex(&l.Harness), NameOf: map[string]string{},
		spliceName: map[string]string{}, Renamed: map[string]string{}, bareName: map[string]string{}}
	s.findMadeUp()
	return s
}

// namesOf are the names of a termination, the surest first: its id, its name, its name
// up to a comma.
func namesOf(t *model.Termination) []string {
	short, _, _ := strings.Cut(t.Name.V, ",")
	return []string{Plain(t.ID), Plain(t.Name.V), Plain(short)}
}

// nameTerminations finds for each termination the one of a that is the same: first
// those with one id to the letter, then one id, then one name against any name, each of a once.
// It says which of a are taken.
func (s *Side) nameTerminations(a *model.Harness) map[string]bool {
	taken := map[string]bool{}
	pass := func(same func(mine, other []string, id bool) bool) {
		for i := range s.Harness.Terminations {
			t := &s.Harness.Terminations[i]
			if s.NameOf[t.ID] != "" {
				continue
			}
			for k := range a.Terminations {
				o := &a.Terminations[k]
				if !taken[o.ID] && same(namesOf(t), namesOf(o), t.ID == o.ID) {
					s.NameOf[t.ID], taken[o.ID] = o.ID, true
					break
				}
			}
		}
	}
	pass(func(_, _ []string, id bool) bool { return id })
	pass(func(m, o []string, _ bool) bool { return m[0] == o[0] && m[0] != "" })
	pass(func(m, o []string, _ bool) bool { return m[1] == o[1] && m[1] != "" })
	pass(func(m, o []string, _ bool) bool {
		return slices.ContainsFunc(m, func(n string) bool { return n != "" && slices.Contains(o, n) })
	})
	return taken
}

// nameSplices finds for each splice the one of was that joins most of the same
// cavities, those that share most first.
func (s *Side) nameSplices(was *Side) {
	joins := func(w *Side) map[string]map[string]bool {
		out := map[string]map[string]bool{}
		for i := range w.Harness.Wires {
			from, ok1 := w.Index.End(w.Harness.Wires[i].From.V)
			to, ok2 := w.Index.End(w.Harness.Wires[i].To.V)
			for _, e := range [][2]model.End{{from, to}, {to, from}} {
				if !ok1 || !ok2 || e[0].Splice == "" || e[1].Splice != "" {
					continue
				}
				if out[e[0].Splice] == nil {
					out[e[0].Splice] = map[string]bool{}
				}
				out[e[0].Splice][w.Cavity(e[1])] = true
			}
		}
		return out
	}
	mine, theirs := joins(s), joins(was)
	at := map[string][]string{} // cavity → splices of was
	for _, o := range was.Harness.Splices {
		for c := range theirs[o.ID] {
			at[c] = append(at[c], o.ID)
		}
	}
	type match struct {
		mine, other string
		n           int
	}
	var all []match
	for _, m := range s.Harness.Splices {
		n := map[string]int{}
		for c := range mine[m.ID] {
			for _, o := range at[c] {
				n[o]++
			}
		}
		for _, o := range was.Harness.Splices {
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
	for _, m := range s.Harness.Splices {
		if s.spliceName[m.ID] == "" {
			s.spliceName[m.ID] = m.ID
			if was.spliceName[m.ID] != "" {
				s.spliceName[m.ID] = m.ID + "'"
			}
		}
	}
}

// Cavity is an end at a termination by its common name; the name alone where a list names it without
// a cavity, and the one that it has is of the import's making or, in a harness, the only one.
func (s *Side) Cavity(e model.End) string {
	t := s.NameOf[e.Termination]
	if t == "" {
		t = e.Termination
	}
	if s.Bare[t] && (s.madeUp[e.Termination] || s.List.States == nil && s.cavities(e.Termination) < 2) {
		return t
	}
	return t + ":" + e.Cavity
}

// End is any end by its common name; "" where there is none.
func (s *Side) End(text string) string {
	e, ok := s.Index.End(text)
	switch {
	case !ok:
		return ""
	case e.Splice != "":
		if n := s.spliceName[e.Splice]; n != "" {
			return n
		}
		return e.Splice
	}
	return s.Cavity(e)
}
