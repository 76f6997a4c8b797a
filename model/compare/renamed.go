package compare

import "maps"

// content is what one cavity holds: the plain names of its signals, and its far ends by common
// names.
type content struct{ signals, far []string }

// contents is what each cavity of each termination holds.
func (s *side) contents() map[string]map[string]*content {
	all := map[string]map[string]*content{}
	common := func(text string) string {
		e, ok := s.index.End(text)
		if !ok || e.Splice != "" || s.nameOf[e.Termination] == "" {
			return ""
		}
		return s.cavity(e)
	}
	for i := range s.harness.Wires {
		w := &s.harness.Wires[i]
		for _, ends := range [][2]string{{w.From.V, w.To.V}, {w.To.V, w.From.V}} {
			e, ok := s.index.End(ends[0])
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
			if name := plain(w.Signal.V); name != "" {
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

// findRenamed finds for each termination without a name of the other list the one there that
// has none either and holds the same in more than half of the cavities of both; of two that
// fit as well it takes none.
func (s *side) findRenamed(was *side, taken map[string]bool) {
	s.renamed = map[string]bool{}
	mine, theirs := s.contents(), was.contents()
	at := map[string][]string{} // key → terminations of was
	for i := range was.harness.Terminations {
		id := was.harness.Terminations[i].ID
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
	for i := range s.harness.Terminations {
		id := s.harness.Terminations[i].ID
		if s.nameOf[id] != "" {
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
			s.nameOf[t], taken[o], s.renamed[t] = o, true, true
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
