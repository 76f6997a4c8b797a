package compare

import (
	"maps"
	"slices"

	"contralay/model"
	"contralay/model/compare/side"
)

// net is what is joined: cavities by common names, and the signals of the wires.
type net struct {
	cavities []string
	signals  []string // plain
	name     string   // the first signal as it is written
	working  bool     // some wire of it is no spare
}

// netsOf joins the ends of each wire; at gives the net of a cavity. Wires in one
// cavity or on one splice are joined, units and shields are not looked at.
func netsOf(s *side.Side) (nets []*net, at map[string]*net) {
	root := map[string]string{}
	find := func(n string) string {
		if _, known := root[n]; !known {
			root[n] = n
		}
		for root[n] != n {
			root[n] = root[root[n]] // halve the way for the next one
			n = root[n]
		}
		return n
	}
	var order []string
	isCavity := map[string]bool{}
	signal := map[string][]string{}
	var working []string // an end of each wire that is no spare
	for i := range s.Harness.Wires {
		w := &s.Harness.Wires[i]
		var ends []string
		for _, text := range []string{w.From.V, w.To.V} {
			if e, ok := s.Index.End(text); ok {
				name := s.End(text)
				ends = append(ends, name)
				if e.Splice == "" && !isCavity[name] {
					isCavity[name] = true
					order = append(order, name)
				}
			}
		}
		if len(ends) == 2 {
			root[find(ends[0])] = find(ends[1])
		}
		if len(ends) > 0 && w.Role.V != model.RoleSpare {
			working = append(working, ends[0])
		}
		if len(ends) > 0 && w.Signal.V != "" && w.Role.V != model.RoleSpare {
			find(ends[0])
			signal[ends[0]] = append(signal[ends[0]], w.Signal.V)
		}
	}
	at = map[string]*net{}
	by := map[string]*net{}
	for _, c := range order {
		r := find(c)
		n := by[r]
		if n == nil {
			n = &net{}
			by[r] = n
			nets = append(nets, n)
		}
		n.cavities = append(n.cavities, c)
		at[c] = n
	}
	for _, e := range working {
		if n := by[find(e)]; n != nil {
			n.working = true
		}
	}
	for _, e := range slices.Sorted(maps.Keys(signal)) {
		if n := by[find(e)]; n != nil {
			for _, text := range signal[e] {
				n.signals = append(n.signals, side.Plain(text))
				if n.name == "" {
					n.name = text
				}
			}
		}
	}
	return nets, at
}
