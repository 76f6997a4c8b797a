package compare

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/compare/side"
)

// Nets are the cavities that each net of a list joins, by the names a harness has for their
// terminations; a cavity of a termination that the harness lacks is left out, and a net of
// nothing else with it. This is what a harness keeps of an independent list.
func Nets(list, harness model.Harness) []model.Listed {
	_, is := side.Both(&harness, &list)
	known := map[string]bool{}
	for _, t := range harness.Terminations {
		known[t.ID] = true
	}
	nets, _ := netsOf(is)
	var out []model.Listed
	for _, n := range nets {
		var ends []string
		for _, c := range n.cavities {
			if known[termination(c)] && !slices.Contains(ends, c) {
				ends = append(ends, c)
			}
		}
		if len(ends) > 0 {
			l := model.Listed{Ends: ends}
			if n.name != "" {
				l.Signal = model.Some(n.name)
			}
			out = append(out, l)
		}
	}
	return out
}

// Unheld is which terminations of a list the harness does not have, by the list's names, and
// which wired terminations of the harness the list does not name: nothing can be held
// against those.
func Unheld(list, harness model.Harness) (ofList, ofHarness []string) {
	was, is := side.Both(&harness, &list)
	there, wired := map[string]bool{}, map[string]bool{}
	for _, t := range harness.Terminations {
		there[t.ID] = true
	}
	named := map[string]bool{}
	for _, t := range list.Terminations {
		name := is.NameOf[t.ID]
		if named[name] = true; !there[name] && !slices.Contains(ofList, t.ID) {
			ofList = append(ofList, t.ID)
		}
	}
	nets, _ := netsOf(was)
	for _, n := range nets {
		for _, c := range n.cavities {
			wired[termination(c)] = true
		}
	}
	for _, t := range harness.Terminations {
		if wired[t.ID] && !named[t.ID] {
			ofHarness = append(ofHarness, t.ID)
		}
	}
	return ofList, ofHarness
}

// NotHeld is what a list cannot hold a harness to, in sentences: where a shield is grounded, ends that the
// list names without a cavity, and terminations that it does not name.
func NotHeld(list, harness model.Harness) (says []string) {
	var drains, bare []string
	for _, u := range list.Units {
		for _, at := range []string{u.DrainFrom.V, u.DrainTo.V} {
			if at != "" {
				drains = append(drains, at)
			}
		}
	}
	l := List{Harness: list}
	for i := range list.Wires {
		for _, at := range l.EndsAt(&list.Wires[i]) {
			if !slices.Contains(bare, at) {
				bare = append(bare, at)
			}
		}
	}
	if len(drains) > 0 {
		says = append(says, "not checked: the drain of a shield at "+strings.Join(drains, ", ")+", as it joins no wire")
	}
	if len(bare) > 0 {
		says = append(says, "not checked: the ends at "+strings.Join(bare, ", ")+", as the lists name no cavity there")
	}
	if _, silent := Unheld(list, harness); len(silent) > 0 {
		says = append(says, "not checked: "+strings.Join(silent, ", ")+", as the lists do not name them")
	}
	return says
}

// Held is how many of the wired cavities of a harness its independent list has.
func Held(harness model.Harness) Count {
	s := side.New(&List{Harness: harness})
	listed := map[model.End]bool{}
	for _, n := range harness.Listed {
		for _, text := range n.Ends {
			if e, ok := s.Index.End(text); ok {
				listed[e] = true
			}
		}
	}
	var c Count
	for t, cavities := range s.Wired() {
		for name := range cavities {
			c.All++
			if listed[model.End{Termination: t, Cavity: name}] {
				c.Matched++
			}
		}
	}
	return c
}

// Listing is a harness of nothing but what a list joins: what Nets kept, made into wires
// again, so that it is compared like any other list.
func Listing(nets []model.Listed, terminations []model.Termination) model.Harness {
	h := model.Harness{Terminations: slices.Clone(terminations)}
	add := func(n model.Listed, k, j int, from, to string) {
		w := model.Wire{ID: fmt.Sprintf("list %d.%d", k+1, j), Signal: n.Signal, From: model.Some(from)}
		if to != "" {
			w.To = model.Some(to)
		}
		h.Wires = append(h.Wires, w)
	}
	named := map[string]bool{}
	for k, n := range nets {
		for _, e := range n.Ends {
			named[termination(e)] = true
		}
		for j := 1; j < len(n.Ends); j++ {
			add(n, k, j, n.Ends[j-1], n.Ends[j])
		}
		if len(n.Ends) == 1 {
			add(n, k, 0, n.Ends[0], "")
		}
	}
	h.Terminations = slices.DeleteFunc(h.Terminations, func(t model.Termination) bool { return !named[t.ID] })
	return h
}

// Joins are the disagreements that are about what is joined to what, and not about what a
// wire is called, coloured or as thick as.
func Joins(all []Difference) []Difference {
	return slices.DeleteFunc(slices.Clone(all), func(d Difference) bool {
		return d.Kind == Changed && !strings.Contains(d.Says, "join") && d.Of != "net"
	})
}
