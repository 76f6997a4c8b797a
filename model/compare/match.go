package compare

import (
	"strings"

	"contralay/model"
	"contralay/model/compare/side"
)

// placed is a wire with its ends by common names; ends without order, "" last.
type placed struct {
	wire     *model.Wire
	one, two string
	ownID    string // "" where an import numbered it
	turned   bool   // the wire runs from two to one
}

func placedWires(s *side.Side) []*placed {
	var all []*placed
	for i := range s.Harness.Wires {
		w := &s.Harness.Wires[i]
		one, two := s.Ends(w)
		turned := one == "" || two != "" && two < one
		if turned {
			one, two = two, one
		}
		all = append(all, &placed{wire: w, one: one, two: two, ownID: s.List.OwnID(w), turned: turned})
	}
	return all
}

func (s *placed) ends() string { return s.one + " " + s.two }

// pair is a wire of the first list and the one of the second that it is.
type pair struct{ was, is *placed }

// match pairs the wires of two lists, the surest way first: ends, id and signal; ends
// and signal; two ends and id; two ends; id and signal; signal, where both lists have
// it once; the only end; id; any end that no other wire has; and where there is none of all these, the rest. Where not ids, those of one
// list
// mean nothing in the other.
func match(was, is []*placed, ids bool) (pairs []pair, gone, new []*placed) {
	m := matcher{was: was, is: is, done: map[*placed]bool{}, partner: map[*placed]*placed{}}
	id := func(s *placed) string {
		if !ids {
			return ""
		}
		return s.ownID
	}
	signal := func(s *placed) string { return side.Plain(s.wire.Signal.V) }
	named := func(more func(*placed) string) func(*placed) string {
		return func(s *placed) string {
			if signal(s) == "" {
				return ""
			}
			return more(s) + "\x00" + signal(s)
		}
	}
	m.pass(named(func(s *placed) string { return s.ends() + "\x00" + id(s) }), false)
	m.pass(named((*placed).ends), false)
	m.pass(func(s *placed) string {
		if s.two == "" {
			return ""
		}
		return s.ends() + "\x00" + id(s)
	}, false)
	// One end alone is a place in a table, which another wire can have: the name of
	// what is there says more.
	m.pass(func(s *placed) string {
		if s.two == "" {
			return ""
		}
		return s.ends()
	}, false)
	m.pass(named(id), true)
	m.pass(signal, true)
	m.pass(func(s *placed) string {
		if s.two != "" {
			return ""
		}
		return s.one
	}, true)
	m.pass(id, true)
	m.shared()
	// Of what has no end, no name and no id the rest is all there is to know it by.
	m.pass(func(s *placed) string {
		w := s.wire
		if s.one != "" || signal(s) != "" || id(s) != "" {
			return ""
		}
		return strings.Join([]string{w.Size, w.Spec, w.Colour.V, w.Note.V}, "\x00")
	}, false)
	for _, s := range was {
		if t := m.partner[s]; t != nil {
			pairs = append(pairs, pair{s, t})
		} else {
			gone = append(gone, s)
		}
	}
	for _, s := range is {
		if !m.done[s] {
			new = append(new, s)
		}
	}
	return pairs, gone, new
}

// matcher pairs the wires of two lists.
type matcher struct {
	was, is []*placed
	done    map[*placed]bool
	partner map[*placed]*placed
}

func (m *matcher) pair(a, b *placed) { m.partner[a], m.done[a], m.done[b] = b, true, true }

// pass pairs what has one key in both lists; once says that a key which stands twice
// in a list is no key.
func (m *matcher) pass(key func(*placed) string, once bool) {
	by := map[string][]*placed{}
	n := map[string]int{}
	for _, b := range m.is {
		if k := key(b); k != "" && !m.done[b] {
			by[k] = append(by[k], b)
		}
	}
	for _, a := range m.was {
		if k := key(a); k != "" && !m.done[a] {
			n[k]++
		}
	}
	for _, a := range m.was {
		k := key(a)
		if k == "" || m.done[a] || len(by[k]) == 0 || once && (len(by[k]) > 1 || n[k] > 1) {
			continue
		}
		m.pair(a, by[k][0])
		by[k] = by[k][1:]
	}
}

// shared pairs wires that have one end in common, where no other has it.
func (m *matcher) shared() {
	at := func(all []*placed) map[string][]*placed {
		by := map[string][]*placed{}
		for _, s := range all {
			if m.done[s] {
				continue
			}
			for _, e := range []string{s.one, s.two} {
				if e != "" {
					by[e] = append(by[e], s)
				}
			}
		}
		return by
	}
	was, is := at(m.was), at(m.is)
	// The end at the smaller connector says more: what was moved is more often in the
	// larger one (no source).
	size := map[string]int{}
	for e := range was {
		size[termination(e)]++
	}
	for _, a := range m.was {
		if m.done[a] {
			continue
		}
		first, second := a.one, a.two
		if second != "" && size[termination(second)] < size[termination(first)] {
			first, second = second, first
		}
		for _, e := range []string{first, second} {
			if e != "" && len(was[e]) == 1 && len(is[e]) == 1 && !m.done[is[e][0]] {
				m.pair(a, is[e][0])
				break
			}
		}
	}
}
