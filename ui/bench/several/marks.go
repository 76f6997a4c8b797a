package several

import (
	"fmt"
	"slices"

	"contralay/calc/phase/ends"
	"contralay/model"
	"contralay/ui/bench/desk"
)

// marks are the wires that are marked on the page of a branch or of a connector. They are dropped
// when the page is left, and when it is opened on something else.
type marks struct {
	of   string
	on   map[string]bool
	like string // the group that the head row has in hand
}

// marksOf are the marks of a page; of is a connector, or "" for the branch in hand.
func marksOf(m *desk.Model, of string) *marks {
	if of == "" && m.Branch < len(m.H.Branches) {
		of = "\x00" + m.H.Branches[m.Branch].ID
	}
	k := desk.State[marks](m)
	if k.of != of || k.on == nil {
		*k = marks{of: of, on: map[string]bool{}}
	}
	return k
}

// wiresOf are the wires of a page: of a connector in the order of its cavities, else those of the
// branch in hand.
func wiresOf(m *desk.Model, of string) []int {
	t, connector := m.Sheet.Index.Termination[of]
	if !connector {
		return m.WiresHere()
	}
	var out []int
	for _, c := range m.Sheet.Terms[t].Cavities {
		for _, id := range m.Sheet.Terms[t].State[c].Wires {
			if k := m.Sheet.Index.Wire[id]; !slices.Contains(out, k) {
				out = append(out, k)
			}
		}
	}
	return out
}

// marked are the ids of the wires of a page that are marked.
func marked(m *desk.Model, of string) []string {
	k := marksOf(m, of)
	var out []string
	for _, i := range wiresOf(m, of) {
		if id := m.H.Wires[i].ID; k.on[id] {
			out = append(out, id)
		}
	}
	return out
}

// group is wires that have something in common.
type group struct {
	name  string
	wires []string
}

// The groups that every page has.
const (
	noWire  = "none"
	allHere = "all"
)

// groupsOf are the groups of a page's wires: none, all, those of a size, of a role, those that end
// at one place, those without a colour; one that would be all of them is left out.
func groupsOf(m *desk.Model, of string) []group {
	here := wiresOf(m, of)
	out := []group{{name: noWire}, {name: allHere}}
	put := func(name string, id string) {
		k := slices.IndexFunc(out, func(g group) bool { return g.name == name })
		if k < 0 {
			out, k = append(out, group{name: name}), len(out)
		}
		out[k].wires = append(out[k].wires, id)
	}
	each := func(name func(w *model.Wire) []string) {
		for _, i := range here {
			for _, n := range name(&m.H.Wires[i]) {
				put(n, m.H.Wires[i].ID)
			}
		}
	}
	for _, i := range here {
		out[1].wires = append(out[1].wires, m.H.Wires[i].ID)
	}
	each(func(w *model.Wire) []string { return []string{model.SizeWords(w.Size)} })
	each(func(w *model.Wire) []string {
		if w.Role.V == "" {
			return []string{"without a role"}
		}
		return []string{string(w.Role.V)}
	})
	each(func(w *model.Wire) []string {
		var places []string
		for _, text := range []string{w.From.V, w.To.V} {
			e, ok := m.Sheet.Index.End(text)
			if place := e.Termination + e.Splice; ok && place != of && !slices.Contains(places, "to "+place) {
				places = append(places, "to "+place)
			}
		}
		return places
	})
	each(func(w *model.Wire) []string {
		if w.Colour.V == "" {
			return []string{"without a colour"}
		}
		return nil
	})
	return slices.DeleteFunc(out, func(g group) bool { return g.name != allHere && len(g.wires) == len(here) && len(here) > 0 })
}

// mark marks the wires of a group and no others.
func (k *marks) mark(g group) {
	k.like, k.on = g.name, map[string]bool{}
	for _, id := range g.wires {
		k.on[id] = true
	}
}

// likeOf are the wires of a page that are like one: of its specification, size and role.
func likeOf(m *desk.Model, of, id string) []string {
	w := &m.H.Wires[m.Sheet.Index.Wire[id]]
	var out []string
	for _, i := range wiresOf(m, of) {
		if o := &m.H.Wires[i]; o.Spec == w.Spec && o.Size == w.Size && o.Role == w.Role {
			out = append(out, o.ID)
		}
	}
	return out
}

// shared is what a value is for several wires: the one they share; several is true where they
// differ.
func shared[T comparable](m *desk.Model, ids []string, value func(w *model.Wire) T) (v T, several bool) {
	for n, id := range ids {
		w := &m.H.Wires[m.Sheet.Index.Wire[id]]
		if n == 0 {
			v = value(w)
		} else if value(w) != v {
			several = true
		}
	}
	return v, several
}

// countText is "1 wire", "the 3 wires".
func countText(n int) string {
	if n == 1 {
		return "1 wire"
	}
	return fmt.Sprintf("%d wires", n)
}

// takes reports whether a cavity takes a size.
func takes(m *desk.Model, t int, cavity, spec, size string) bool {
	return ends.Takes(m.Sheet, t, cavity, spec, size)
}
