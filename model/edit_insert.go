package model

import (
	"maps"
	"slices"
)

// TakeInsert gives a termination an arrangement of the catalogue. What the file lists of its own
// cavities, contacts and seal goes, because the arrangement brings its own. to says what each cavity
// in use becomes: the ends of wires and drains, what is reserved and other names follow. Other names
// of a cavity that is not in to stay where the arrangement has that cavity, and go where it has not.
func (h *Harness) TakeInsert(t int, insert string, to map[string]string, has func(cavity string) bool) *Harness {
	was := h.Terminations[t]
	end := func(o Opt[string]) Opt[string] {
		e, ok := ParseEnd(o.V)
		if !ok || e.Termination != was.ID {
			return o
		}
		if c, moves := to[was.CavityOf(e.Cavity)]; moves && c != e.Cavity {
			o.V = was.ID + ":" + c
		}
		return o
	}
	n := h.EditTermination(t, func(x *Termination) {
		x.Insert = Some(insert)
		x.Cavities, x.Contacts, x.SealMM = nil, nil, nil
		x.Reserved = slices.Clone(was.Reserved)
		for k, c := range x.Reserved {
			if now, moves := to[was.CavityOf(c)]; moves {
				x.Reserved[k] = now
			}
		}
		x.Aliases = nil
		for _, c := range slices.Sorted(maps.Keys(was.Aliases)) {
			now, moves := to[c]
			if !moves && !has(c) {
				continue
			}
			if !moves {
				now = c
			}
			if x.Aliases == nil {
				x.Aliases = map[string][]string{}
			}
			x.Aliases[now] = was.Aliases[c]
		}
	})
	n.Wires = slices.Clone(h.Wires)
	for k := range n.Wires {
		w := &n.Wires[k]
		w.From, w.To = end(w.From), end(w.To)
	}
	if len(h.Units) > 0 {
		n.Units = slices.Clone(h.Units)
		for k := range n.Units {
			u := &n.Units[k]
			u.DrainFrom, u.DrainTo = end(u.DrainFrom), end(u.DrainTo)
		}
	}
	return n
}
