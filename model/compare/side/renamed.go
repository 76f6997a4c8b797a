package side

import (
	"fmt"
	"maps"

	"contralay/model"
)

// content is what one cavity holds: the plain names of its signals, and its far ends by common
// names.
type content struct{ signals, far []string }

// contents is what each cavity of each termination holds.
func (s *Side) contents() map[string]map[string]*content {
	all := map[string]map[string]*content{}
	common := func(text string) string {
		e, ok := s.Index.End(text)
		if !ok || e.Splice != "" || s.NameOf[e.Termination] == "" {
			return ""
		}
		return s.Cavity(e)
	}
	for i := range s.Harness.Wires {
		w := &s.Harness.Wires[i]
		for _, ends := range [][2]string{{w.From.V, w.To.V}, {w.To.V, w.From.V}} {
			e, ok := s.Index.End(ends[0])
			if !ok || e.Splice != "" {
				continue
			}
			if all[e.Termination] == nil {
				all[e.Termination] = map[string]*content{}
			}
			h := all[e.Termination][e.Cavity]
			if h == nil {
				h = &content{}
				all[e.Termination][e.Cavity] = h
			}
			if name := Plain(w.Signal.V); name != "" {
				h.signals = append(h.signals, name)
			}
			if far := common(ends[1]); far != "" {
				h.far = append(h.far, far)
			}
		}
	}
	return all
}

// keys are what is looked for in the other list: each cavity with each thing it holds.
func (h *content) keys(cavity string) []string {
	var all []string
	for _, n := range h.signals {
		all = append(all, cavity+"\x00"+n)
	}
	for _, f := range h.far {
		all = append(all, cavity+"\x01"+f)
	}
	return all
}

// tellsNothing is how many connectors may hold the same in a cavity before it tells nothing of
// which one it is, as "1: ground" does (no source).
const tellsNothing = 64

// findRenamed finds for each termination without a name of the other list the one there that is
// the same: one that holds the same in most of its cavities; then the only connector of either
// list; then one with most of the same wire ids, where both lists have ids of their own; then
// one with most of the same signals.
func (s *Side) findRenamed(was *Side, taken map[string]bool) {
	for id := range was.madeUp {
		if !taken[id] { // another name of a far end alone is another far end
			taken[id] = true
			defer delete(taken, id)
		}
	}
	s.byContent(was, taken)
	if a, b := was.only(), s.only(); a != "" && b != "" && s.NameOf[b] == "" && !taken[a] {
		s.rename(b, a, taken, "it is the only connector in both")
	}
	if s.List.HasIDs() && was.List.HasIDs() {
		s.byKey(was, taken, func(l *List, w *model.Wire) string { return l.OwnID(w) }, "wires have the same ids")
	}
	s.byKey(was, taken, func(_ *List, w *model.Wire) string { return Plain(w.Signal.V) }, "signals are the same")
}

func (s *Side) rename(id, to string, taken map[string]bool, because string) {
	s.NameOf[id], taken[to], s.Renamed[id] = to, true, because
}

// only is the one connector of a list, "" where it has several: what has one cavity is no connector
// where something has more.
func (s *Side) only() string {
	var all, large []string
	for i := range s.Harness.Terminations {
		id := s.Harness.Terminations[i].ID
		if s.madeUp[id] {
			continue
		}
		all = append(all, id)
		if s.cavities(id) > 1 {
			large = append(large, id)
		}
	}
	switch {
	case len(large) == 1:
		return large[0]
	case len(all) == 1:
		return all[0]
	}
	return ""
}

// byKey pairs terminations that have more than half of their keys in common, of the wires that end
// there; of two that fit as well none.
func (s *Side) byKey(was *Side, taken map[string]bool, key func(*List, *model.Wire) string, because string) {
	keys := func(of *Side, free func(id string) bool) map[string]map[string]bool {
		all := map[string]map[string]bool{}
		for i := range of.Harness.Wires {
			w := &of.Harness.Wires[i]
			k := key(of.List, w)
			for _, text := range []string{w.From.V, w.To.V} {
				e, ok := of.Index.End(text)
				if !ok || e.Splice != "" || k == "" || !free(e.Termination) {
					continue
				}
				if all[e.Termination] == nil {
					all[e.Termination] = map[string]bool{}
				}
				all[e.Termination][k] = true
			}
		}
		return all
	}
	mine := keys(s, func(id string) bool { return s.NameOf[id] == "" && !s.madeUp[id] })
	theirs := keys(was, func(id string) bool { return !taken[id] })
	at := map[string][]string{} // key → terminations of was
	for id, all := range theirs {
		for k := range all {
			at[k] = append(at[k], id)
		}
	}
	fits, best := map[string]map[string]int{}, map[string]string{}
	for id, all := range mine {
		n := map[string]int{}
		for k := range all {
			if len(at[k]) <= tellsNothing {
				for _, o := range at[k] {
					n[o]++
				}
			}
		}
		maps.DeleteFunc(n, func(o string, k int) bool { return 2*k <= max(len(all), len(theirs[o])) })
		for o, k := range n {
			if fits[o] == nil {
				fits[o] = map[string]int{}
			}
			fits[o][id] = k
		}
		best[id] = most(n)
	}
	for id, o := range best {
		if o != "" && most(fits[o]) == id {
			s.rename(id, o, taken, fmt.Sprintf("%d of %d %s", fits[o][id], max(len(mine[id]), len(theirs[o])), because))
		}
	}
}

// byContent pairs terminations that hold the same in more than half of the cavities of both; of two
// that fit as well none.
func (s *Side) byContent(was *Side, taken map[string]bool) {
	mine, theirs := s.contents(), was.contents()
	at := map[string][]string{} // key → terminations of was
	for i := range was.Harness.Terminations {
		id := was.Harness.Terminations[i].ID
		if taken[id] {
			continue
		}
		for c, h := range theirs[id] {
			for _, k := range h.keys(c) {
				at[k] = append(at[k], id)
			}
		}
	}
	fits := map[string]map[string]int{} // termination of was → of s → cavities that hold the same
	best := map[string]string{}         // of s → of was
	for i := range s.Harness.Terminations {
		id := s.Harness.Terminations[i].ID
		if s.NameOf[id] != "" || s.madeUp[id] {
			continue
		}
		n := map[string]int{}
		for c, h := range mine[id] {
			same := map[string]bool{}
			for _, k := range h.keys(c) {
				if len(at[k]) > tellsNothing {
					continue
				}
				for _, o := range at[k] {
					same[o] = true
				}
			}
			for o := range same {
				n[o]++
			}
		}
		maps.DeleteFunc(n, func(o string, k int) bool { return 2*k <= max(len(mine[id]), len(theirs[o])) })
		for o, k := range n {
			if fits[o] == nil {
				fits[o] = map[string]int{}
			}
			fits[o][id] = k
		}
		best[id] = most(n)
	}
	for t, o := range best {
		if o != "" && most(fits[o]) == t {
			because := "it holds the same"
			if k, n := fits[o][t], max(len(mine[t]), len(theirs[o])); k < n {
				because = fmt.Sprintf("%d of %d cavities hold the same", k, n)
			}
			s.rename(t, o, taken, because)
		}
	}
}

// most is the key of the largest number, "" where two have it.
func most(n map[string]int) (found string) {
	top := 0
	for o, k := range n {
		switch {
		case k > top:
			found, top = o, k
		case k == top:
			found = ""
		}
	}
	return found
}
