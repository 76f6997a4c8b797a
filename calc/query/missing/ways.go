package missing

import (
	"fmt"

	"contralay/calc/sheet"
)

// ways is the places that no branch leads to: of each part of the tree that does not hang together
// with the rest one place.
func ways(s *sheet.Sheet) []Need {
	all := places(s)
	part, rest := parts(s, all)
	if len(all) == 1 && len(s.H.Branches) == 0 {
		return []Need{{Kind: Way, Of: Place, IDs: all, Says: "no branch leads from " + all[0] + " yet"}}
	}
	var ids []string
	met := map[int]bool{rest: true}
	lacks := func(place string) {
		if !met[part[place]] {
			met[part[place]], ids = true, append(ids, place)
		}
	}
	without := 0
	for i := range s.H.Wires {
		from, to, ok := s.Index.Places(&s.H.Wires[i])
		if !ok || s.Wires[i].HasPath || part[from] == part[to] {
			continue
		}
		without++
		lacks(from)
		lacks(to)
	}
	for i := range s.H.Terminations {
		if id := s.H.Terminations[i].ID; len(s.Index.Meeting(id)) == 0 {
			lacks(id)
		}
	}
	if len(ids) == 0 {
		return nil
	}
	n := Need{Kind: Way, Of: Place, IDs: ids, Says: "no branch leads to " + listed(ids)}
	if from := Starts(s, ids[0]); len(from) == 1 && len(ids) == 1 {
		n.Says = fmt.Sprintf("no branch from %s to %s", from[0], ids[0])
	}
	if without > 0 {
		n.Rules = []string{"wire.path"}
		n.Says += ": " + plural(without, "wire has", "wires have") + " no way"
	}
	return []Need{n}
}

// Starts is where a branch can begin that leads to a place which no branch leads to: breakouts, and
// terminations without a branch, of the part of the tree with the most wire ends; where the place is
// in that itself, of the others.
func Starts(s *sheet.Sheet, to string) []string {
	all := places(s)
	part, rest := parts(s, all)
	var out []string
	for _, id := range all {
		_, termination := s.Index.Termination[id]
		if part[id] == part[to] || part[to] != rest && part[id] != rest || termination && len(s.Index.Meeting(id)) > 0 {
			continue
		}
		out = append(out, id)
	}
	return out
}

// places is every termination and breakout, in the order of the file, breakouts first.
func places(s *sheet.Sheet) []string {
	var out []string
	for i := range s.H.Breakouts {
		out = append(out, s.H.Breakouts[i].ID)
	}
	for i := range s.H.Terminations {
		out = append(out, s.H.Terminations[i].ID)
	}
	return out
}

// parts numbers what hangs together by branches. rest is the part to which the others are to be
// joined: that with the most wire ends, of like ones that with the most places.
func parts(s *sheet.Sheet, all []string) (part map[string]int, rest int) {
	part = map[string]int{}
	var size, ends []int
	for _, id := range all {
		if _, met := part[id]; met {
			continue
		}
		n := len(size)
		size, ends = append(size, 0), append(ends, 0)
		part[id] = n
		for next := []string{id}; len(next) > 0; {
			at := next[0]
			next = next[1:]
			size[n]++
			for _, b := range s.Index.Meeting(at) {
				if to := s.Index.Other(b, at); !has(part, to) {
					part[to], next = n, append(next, to)
				}
			}
		}
	}
	for i := range s.H.Wires {
		if from, to, ok := s.Index.Places(&s.H.Wires[i]); ok {
			ends[part[from]]++
			ends[part[to]]++
		}
	}
	for n := range size {
		if ends[n] > ends[rest] || ends[n] == ends[rest] && size[n] > size[rest] {
			rest = n
		}
	}
	return part, rest
}

func has(part map[string]int, id string) bool { _, ok := part[id]; return ok }
